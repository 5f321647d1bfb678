using Duskwright.Light.Leaks;
using Duskwright.Light.Rooms;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Operation;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Results;

/// <summary>Where the light of one room would show that should not: walls, roof, the floor to a dark room above, seams.</summary>
public sealed record RoomLeaks
{
    // Arm's length, from where seams are looked at.
    private const double ViewingMetres = 0.6;

    /// <summary>The building it is in.</summary>
    public required string Building { get; init; }

    /// <summary>Which of the building's storeys, from 0.</summary>
    public required int Storey { get; init; }

    /// <summary>Which of the storey's rooms, from 0.</summary>
    public required int Room { get; init; }

    /// <summary>What is between it and the outside, each with the coats of black it needs: what a wall is made of is not said, so card and balsa both stand here.</summary>
    public required ItemList<Leak> Leaks { get; init; }

    /// <summary>The widest open seam that does not show at arm's length, m.</summary>
    public required Figure WidestSeam { get; init; }

    internal static ItemList<RoomLeaks> Of(ResolvedTown resolved, CircuitResults circuits, Memo memo)
    {
        var room = resolved.Town.Show.RoomIlluminance is { } said
            ? Figure.Given("light in the room", said.Lux, "lx", "as said of the show", Certainty.Assumed)
            : Figure.Given("light in the room", LeakSight.DarkestRoomLux, "lx", "not said; a darkened hall, from memory", Certainty.Assumed);
        return resolved.Buildings.SelectMany(b => PaneResults.Rooms(b, circuits).Select(r => Of(b.Building, r, memo.Get(r.Query, q => q.Answer()), room))).ToItemList();
    }

    private static RoomLeaks Of(Building building, PaneResults.LampRoom room, RoomTransfer transfer, Figure roomLux)
    {
        Figure Most(string name, params BoxFace[] faces) => Figure.Given(
            name,
            faces.Max(face => room.Lamps.Select((l, i) => l.Candelas.Value * transfer.Lamps[i].FaceMostLux[(int)face]).Sum()),
            "lx",
            "its brightest patch: straight light and light thrown to and fro, all lamps of the room on",
            Certainty.Computed);
        var walls = Most("most light on a wall inside", BoxFace.Left, BoxFace.Right, BoxFace.Front, BoxFace.Back);
        var ceiling = Most("most light on the ceiling", BoxFace.Ceiling);
        var leaks = new List<Leak> { Leak("walls", Covering.Card, walls, roomLux), Leak("walls", Covering.Balsa, walls, roomLux) };
        if (room.Storey == building.Storeys.Count - 1)
        {
            leaks.Add(Leak("roof", Covering.Paper, ceiling, roomLux));
            leaks.Add(Leak("roof", Covering.Card, ceiling, roomLux));
        }
        else if (building.Storeys[room.Storey + 1].Rooms.Any(r => r.Windows.Count > 0 && r.Lamps.Count == 0))
        {
            leaks.Add(Leak("floor of the dark room above", Covering.Card, ceiling, roomLux));
        }

        var inside = Figure.Given("brightest wall inside", walls.Value * room.Query.Reflectance / Math.PI, "cd/m²", "most light on a wall × what it throws back ÷ π", Certainty.Computed);
        return new RoomLeaks
        {
            Building = building.Key,
            Storey = room.Storey,
            Room = room.Room,
            Leaks = leaks.ToItemList(),
            WidestSeam = Figure.From(Laws.WidestSeam, "widest seam that does not show", "m", inside, roomLux, Figure.Given("looked at from", ViewingMetres, "m", "arm's length; common practice, no source", Certainty.Typical)),
        };
    }

    private static Leak Leak(string what, Covering covering, Figure inside, Figure roomLux) => new(
        what,
        covering.Name,
        inside,
        Figure.From(Laws.CoatsUntilUnseen, $"coats of black on {covering.Name}", "", Figure.Given($"{covering.Name} passes", covering.Transmittance, "share", "from memory", Certainty.Typical), inside, roomLux));
}

/// <summary>One way out for a room's light.</summary>
/// <param name="What">What it passes: "walls", "roof", "floor of the dark room above".</param>
/// <param name="Covering">What that is made of: "1 mm card".</param>
/// <param name="InsideLux">The most light on its inner face, lx.</param>
/// <param name="Coats">Coats of matt black after which nothing shows in the show's room light.</param>
public sealed record Leak(string What, string Covering, Figure InsideLux, Figure Coats);
