using Duskwright.Study.Findings;

namespace Duskwright.Study.Tests;

public class SaltmarrowTests
{
    private static readonly TownStudy Study = TownStudy.Of(Demo.Saltmarrow);

    [Fact]
    public void The_overloaded_pack_fades_before_the_show_ends_and_its_remedy_mends_it()
    {
        var finding = Assert.Single(Study.Findings, f => f.Rule == "pack-fades");
        Assert.Equal(Subject.Supply("3"), finding.Subject);
        var mended = Study.After(finding.Edits[0].Apply(Study.Town));
        Assert.DoesNotContain(mended.Findings, f => f.Rule == "pack-fades");
        Assert.True(mended.Packs[2].HoursToDim!.Value > 8);
    }

    [Fact]
    public void The_bare_lamp_close_behind_clear_glass_is_found() =>
        Assert.Equal("chandlery", Assert.Single(Study.Findings, f => f.Rule == "dot-shows").Subject.Key);

    [Fact]
    public void The_pack_without_a_fuse_is_found_and_its_remedy_opens_on_a_short()
    {
        var finding = Assert.Single(Study.Findings, f => f.Rule == "no-fuse");
        Assert.True(Study.After(finding.Edits[0].Apply(Study.Town)).Packs[3].ShortCircuit!.FuseOpens);
    }

    [Fact]
    public void A_house_with_an_unknown_lamp_has_a_range_and_is_said()
    {
        var almshouses = Study.Buildings.Single(b => b.Building.Key == "almshouses");
        Assert.True(almshouses.Current!.High > 1.3 * almshouses.Current.Low);
        Assert.Contains(Study.Findings, f => f.Rule == "not-known" && f.Subject == Subject.Building("almshouses"));
    }

    [Fact]
    public void Every_sentence_has_its_numbers_in_place() =>
        Assert.All(Study.Findings, f => Assert.DoesNotMatch(@"\{\d", f.Text));

    [Fact]
    public void Light_only_fades_while_the_show_runs()
    {
        for (var hour = 0; hour < 8; hour++)
        {
            Assert.All(Study.At(hour).Lamps.Zip(Study.At(hour + 1).Lamps), pair => Assert.True(pair.Second.LightShare <= pair.First.LightShare + 1e-9));
        }
    }

    [Fact]
    public void Labels_differ_and_each_pair_has_one()
    {
        Assert.Equal(42, Study.Labels.Count);
        Assert.Equal(42, Study.Labels.Select(l => l.Code).Distinct().Count());
        Assert.Equal(42, Study.Labels.Select(l => l.Terminal).Distinct().Count());
    }
}
