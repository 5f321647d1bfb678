using Duskwright.Light.Rooms;
using Duskwright.Study.Operation;
using Duskwright.Study.Results;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Tests;

public class RoomEnergyTests
{
    // Nothing is normalised on the way: straight light is integrated patch by patch and view factors are closed forms.
    // Source: closed form (what a lamp sends out either goes out through a pane or is swallowed).
    [Fact]
    public void In_every_room_of_Saltmarrow_light_out_of_panes_and_light_swallowed_is_light_sent_out()
    {
        var resolved = ResolvedTown.Of(Demo.Saltmarrow, new Memo(null));
        var rooms = PaneResults.Queries(resolved, CircuitResults.Of(resolved, new Memo(null))).Select(q => q.Answer()).ToList();
        Assert.True(rooms.Count > 20);
        foreach (var room in rooms)
        {
            Assert.All(room.Lamps, lamp => Assert.Equal(lamp.Lumens, lamp.AbsorbedLumens + OutOfPanes(room, lamp), 1e-3 * lamp.Lumens));
        }
    }

    private static double OutOfPanes(RoomTransfer room, LampReach lamp)
    {
        var lumens = 0.0;
        for (var p = 0; p < room.Panes.Length; p++)
        {
            lumens += room.Room.Panes[p].Sheet.Transmittance * room.Panes[p].Area * room.Panes[p].Mean(lamp.Panes[p].Lux);
        }

        return lumens;
    }
}
