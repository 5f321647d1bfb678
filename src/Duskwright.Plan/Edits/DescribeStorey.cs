using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>One storey of a building added, said anew or taken away.</summary>
/// <param name="Building">The building's key.</param>
/// <param name="At">Which storey, counted from 0; the number of storeys adds one on top.</param>
/// <param name="Storey">The storey as it is to be; none takes it away.</param>
/// <param name="Words">The label.</param>
public sealed record DescribeStorey(string Building, int At, Storey? Storey, string Words) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => Words;

    /// <summary>One storey more on top, like the one below it but with its lamps and windows left to be drawn; the first takes the lamps that were only counted.</summary>
    /// <param name="building">The building.</param>
    /// <returns>The edit.</returns>
    public static DescribeStorey OnTop(Building building)
    {
        var storey = building.Storeys.Count > 0
            ? building.Storeys[^1] with { Name = null, Rooms = building.Storeys[^1].Rooms.Select(r => r with { Name = null, Lamps = [], Windows = [] }).ToItemList() }
            : new Storey { Rooms = [new Room { Lamps = Enumerable.Range(0, building.Leds ?? 0).Select(_ => new Lamp()).ToItemList() }] };
        return new DescribeStorey(building.Key, building.Storeys.Count, storey, $"{building.Name}: one storey more");
    }

    /// <inheritdoc/>
    public override Town Apply(Town town) => town with { Buildings = town.Buildings.Select(b => b.Key == Building ? Described(b) : b).ToItemList() };

    private Building Described(Building building)
    {
        var storeys = Storey switch
        {
            null when At < building.Storeys.Count => building.Storeys.Without(At),
            { } added when At == building.Storeys.Count => building.Storeys.Add(added),
            { } changed when At < building.Storeys.Count => building.Storeys.With(At, changed),
            _ => building.Storeys,
        };
        var after = building with { Storeys = storeys };
        return after.DescribedLamps().Any() ? after with { Leds = null } : after;
    }
}
