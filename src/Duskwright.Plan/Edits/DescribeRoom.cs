using System.Globalization;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>One room of a building said anew: its windows, its lamps, its size or finish. A building whose lamps are told room by room is no longer told by their number.</summary>
/// <param name="Building">The building's key.</param>
/// <param name="At">Which room.</param>
/// <param name="Room">The room as it is to be; none takes it away.</param>
/// <param name="Words">The label.</param>
public sealed record DescribeRoom(string Building, RoomAt At, Room? Room, string Words) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => Words;

    /// <inheritdoc/>
    public override Town Apply(Town town) => town with { Buildings = town.Buildings.Select(b => b.Key == Building ? Described(b) : b).ToItemList() };

    /// <inheritdoc/>
    public override ItemList<Problem> Problems(Town town)
    {
        if (Room is null || town.Buildings.FirstOrDefault(b => b.Key == Building) is not { } building || At.In(building) is not { } before || At.Storey >= building.Storeys.Count)
        {
            return [];
        }

        // Other rooms of the storey share its walls; what stood over another before is not this edit's doing.
        var others = building.Storeys[At.Storey].Rooms.Where((_, i) => i != At.Room).SelectMany(r => r.Windows).ToList();
        foreach (var (window, i) in Room.Windows.Select((w, i) => (w, i)).Where(w => !before.Windows.Contains(w.w)))
        {
            if (others.Concat(Room.Windows.Where((_, o) => o != i)).FirstOrDefault(o => Over(window, o)) is { } other)
            {
                return
                [
                    new Problem(
                        $"{building.Name}, storey {At.Storey + 1}",
                        "window-over-window",
                        string.Create(CultureInfo.InvariantCulture, $"A window of {building.Name} would lie over the one from {other.FromLeft!.Value.Millimetres:0.#} to {other.FromLeft.Value.Millimetres + other.Width.Millimetres:0.#} mm on the same wall."),
                        "Move it beside that one, or make one of them narrower."),
                ];
            }
        }

        return [];
    }

    private static bool Over(Window one, Window other) =>
        one.Wall == other.Wall
        && one is { FromLeft: { } left, Sill: { } sill }
        && other is { FromLeft: { } otherLeft, Sill: { } otherSill }
        && left.Millimetres < otherLeft.Millimetres + other.Width.Millimetres && otherLeft.Millimetres < left.Millimetres + one.Width.Millimetres
        && sill.Millimetres < otherSill.Millimetres + other.Height.Millimetres && otherSill.Millimetres < sill.Millimetres + one.Height.Millimetres;

    private Building Described(Building building)
    {
        var after = At.With(building, Room);
        return after.DescribedLamps().Any() ? after with { Leds = null } : after;
    }
}
