using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study;

namespace Duskwright.Proposals;

/// <summary>A first plan for a bare list of houses: packs, switches and fuses.</summary>
public static class StartingPlan
{
    /// <summary>Gives a town without packs a first sharing; a town that has packs stays as it is.</summary>
    /// <param name="town">The town.</param>
    /// <returns>The town with packs, or as it was where there is nothing to feed.</returns>
    public static Town Of(Town town)
    {
        if (town.Supplies.Count > 0 || SharingProposal.Of(town, UsualPack(town)).Edit is not { } edit)
        {
            return town;
        }

        var shared = edit.Apply(town);
        var fuses = TownStudy.Of(shared).Packs.ToDictionary(p => p.Supply.Id, p => p.ShortCircuit?.Advice?.Fuse.Id, StringComparer.Ordinal);
        return shared with { Supplies = shared.Supplies.Select(s => s with { Fuse = fuses[s.Id] }).ToItemList() };
    }

    /// <summary>The pack a beginner would be given: three LR6, or two where every lamp flickers and needs no more.</summary>
    /// <param name="town">The town.</param>
    /// <returns>The pack.</returns>
    public static Supply UsualPack(Town town)
    {
        var leds = town.Buildings.Select(b => b.Led ?? town.Wiring.Led).ToList();
        var allFlicker = leds.Count > 0 && leds.All(id => id is not null && Catalogue.FindLamp(town, id)?.Kind == LampKind.Flickering);
        return new Supply { Id = "1", Part = "LR6", Series = allFlicker ? 2 : 3 };
    }
}
