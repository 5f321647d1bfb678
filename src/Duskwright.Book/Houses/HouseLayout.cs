using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study.Results;

namespace Duskwright.Book.Houses;

/// <summary>Where windows and lamps of a building are drawn, those whose place nobody has said among them.</summary>
public static class HouseLayout
{
    /// <summary>The windows of one wall, in the order of the document.</summary>
    /// <param name="result">The building.</param>
    /// <param name="wall">The wall.</param>
    /// <returns>Their places.</returns>
    public static ItemList<WindowPlace> Windows(BuildingResult result, WallSide wall) =>
        new HousePlan(result).Windows(wall)
            .Select(w => new WindowPlace(w.Storey, w.Room, w.Index, w.Window, w.Left, w.Sill - w.Floor, w.From, w.From + w.Share, w.Height))
            .ToItemList();

    /// <summary>The lamps that are described room by room, in the order of the document.</summary>
    /// <param name="result">The building.</param>
    /// <returns>Their places.</returns>
    public static ItemList<LampSpot> Lamps(BuildingResult result) =>
        (from room in new HousePlan(result).Rooms
         from lamp in room.Lamps.Select((l, i) => (Lamp: l, Index: i))
         select new LampSpot(room.Storey, room.Index, lamp.Index, lamp.Lamp.Lamp.Name, lamp.Lamp.FromLeft, lamp.Lamp.AboveFloor, lamp.Lamp.FromFront, room.Width, room.Depth, room.Height)).ToItemList();

    /// <summary>The share of a wall that is a room's, and the storey's height.</summary>
    /// <param name="result">The building.</param>
    /// <param name="storey">The storey, counted from 0.</param>
    /// <param name="room">The room, counted from 0 in the storey.</param>
    /// <param name="wall">The wall.</param>
    /// <returns>Where the share begins and ends along the wall seen from outside, and the height, mm.</returns>
    public static (double FromMillimetres, double ToMillimetres, double HeightMillimetres) Share(BuildingResult result, int storey, int room, WallSide wall)
    {
        var plan = new HousePlan(result);
        var laid = plan.Rooms.First(r => r.Storey == storey && r.Index == room);
        return wall switch
        {
            WallSide.Front => (laid.Left, laid.Left + laid.Width, laid.Height),
            WallSide.Back => (plan.Width - laid.Left - laid.Width, plan.Width - laid.Left, laid.Height),
            _ => (0, plan.Depth, laid.Height),
        };
    }
}
