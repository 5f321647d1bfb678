using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Benchmarks;

/// <summary>A large town: a small one several times, each copy on packs and switches of its own and a little higher than the last.</summary>
internal static class CopiedTown
{
    private const double UsualHeightMillimetres = 35;

    internal static Town Of(Town town, int times, double higherMillimetres)
    {
        var copies = Enumerable.Range(0, times).ToList();
        return town with
        {
            Buildings = copies.SelectMany(c => town.Buildings.Select(b => b with
            {
                Id = $"{b.Key}-{c}",
                Code = null,
                SwitchGroup = $"{b.SwitchGroup}-{c}",
                Storeys = b.Storeys.Select(s => Higher(s, c * higherMillimetres, c)).ToItemList(),
            })).ToItemList(),
            Supplies = copies.SelectMany(c => town.Supplies.Select(s => s with { Id = $"{s.Id}-{c}" })).ToItemList(),
            SwitchGroups = copies.SelectMany(c => town.SwitchGroups.Select(g => g with { Id = $"{g.Id}-{c}", Supply = $"{g.Supply}-{c}" })).ToItemList(),
            Scenes = [],
            Routes = [],
            Log = [],
        };
    }

    private static Storey Higher(Storey storey, double millimetres, int copy) => storey with
    {
        Height = Length.FromMillimetres((storey.Height?.Millimetres ?? UsualHeightMillimetres) + millimetres),
        Rooms = storey.Rooms.Select(r => r with { Lamps = r.Lamps.Select(l => l.SwitchGroup is { } group ? l with { SwitchGroup = $"{group}-{copy}" } : l).ToItemList() }).ToItemList(),
    };
}
