using Duskwright.Plan.Tests;

namespace Duskwright.Study.Tests;

/// <summary>Whatever a sound document says, however odd: it is computed, and the laws of circuits hold.</summary>
public class AnySoundTownTests
{
    [Fact]
    public void In_any_town_each_lamp_on_a_pack_carries_a_current_of_its_own_and_the_pack_their_sum() =>
        RandomTowns.Sound.Sample(
            town =>
            {
                var study = TownStudy.Of(town);
                Assert.All(study.Buildings, b => Assert.Equal(b.Lamps.Count, b.Lamps.Select(l => l.Name).Distinct(StringComparer.Ordinal).Count()));
                Assert.All(study.Lamps, l => Assert.Equal(l.Supply is not null, l.Current is not null));
                Assert.All(study.Packs.Where(p => p.Load is not null), p =>
                {
                    // Kirchhoff's current law.
                    var sum = study.Lamps.Where(l => l.Supply == p.Supply.Id).Sum(l => l.Current!.Value);
                    Assert.Equal(sum, p.Load!.Value, 1e-9 + (1e-6 * sum));
                });
                Assert.All(study.Findings, f => Assert.All(f.Edits, e => Assert.NotNull(e.Apply(town))));
            },
            iter: 12);
}
