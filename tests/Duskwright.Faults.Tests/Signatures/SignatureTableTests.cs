using Duskwright.Faults.Signatures;

namespace Duskwright.Faults.Tests.Signatures;

/// <summary>What each fault shows, by facts that makers know.</summary>
public sealed class SignatureTableTests
{
    private static readonly SignatureTable Table = SignatureTable.Of(Hamlet.Of(820, 5, 3));

    // Source: common practice, no source: one lamp = its branch; one house = its pair.
    [Theory]
    [InlineData(FaultKind.LampJointOpen, "A2", "A2")]
    [InlineData(FaultKind.LampDead, "A2", "A2")]
    [InlineData(FaultKind.LampShorted, "A2", "A2")]
    [InlineData(FaultKind.LampReversed, "B1", "B1")]
    [InlineData(FaultKind.PairOpen, "pair of B", "B1 B2 B3")]
    [InlineData(FaultKind.PairReversed, "pair of B", "B1 B2 B3")]
    [InlineData(FaultKind.PairShorted, "pair of B", "B1 B2 B3")]
    public void A_fault_darkens_what_hangs_behind_it(FaultKind kind, string place, string dark) =>
        Assert.Equal(dark, string.Join(' ', Table.Tagged.Lamps.Where((_, i) => Of(kind, place).Look(i) == LampLook.Dark).Select(l => l.Name)));

    // By hand: a white lamp behind 820 Ω takes about 2.3 mA of 4.8 V; its short leaves 4.8 V / 820 Ω = 5.9 mA.
    [Fact]
    public void An_open_lamp_lowers_the_packs_current_and_a_shorted_one_raises_it()
    {
        var healthy = Table.Healthy.PackAmps[0];
        Assert.Equal(-2.3e-3, Of(FaultKind.LampJointOpen, "A1").PackAmps[0] - healthy, 0.2e-3);
        Assert.Equal(5.9e-3 - 2.3e-3, Of(FaultKind.LampShorted, "A1").PackAmps[0] - healthy, 0.3e-3);
    }

    [Fact]
    public void A_shorted_pair_leaves_the_other_houses_next_to_nothing() =>
        Assert.All(Enumerable.Range(0, 5), lamp => Assert.InRange(Of(FaultKind.PairShorted, "pair of B").LightShares[lamp], 0, 0.05));

    // By hand: 4.8 V over 3 × 0.25 + 0.2 Ω of the pack, 1 Ω of the pair and 0.05 Ω of the touch: 2.4 A.
    [Fact]
    public void A_shorted_pair_draws_amperes() => Assert.Equal(4.8 / 2.0, Of(FaultKind.PairShorted, "pair of A").PackAmps[0], 0.03);

    [Fact]
    public void A_reversed_lamp_takes_its_own_current_away_and_nothing_else()
    {
        var reversed = Of(FaultKind.LampReversed, "A1");
        Assert.Equal(Of(FaultKind.LampJointOpen, "A1").PackAmps[0], reversed.PackAmps[0], 1e-6);
        Assert.All(Enumerable.Range(1, 7), lamp => Assert.InRange(reversed.LightShares[lamp], 0.999, 1.02));
    }

    // White lamps need about 2.8 V (common practice, no source): 1.6 + 1.6 + 0.85 V leave more than that, so they dim and do not go dark.
    [Fact]
    public void One_flat_cell_of_three_dims_every_lamp()
    {
        var flat = Of(FaultKind.CellFlat, "pack");
        Assert.All(Enumerable.Range(0, 8), lamp => Assert.InRange(flat.LightShares[lamp], 0.4, 0.8));
    }

    // A bad joint that lets too little through is told from a broken one by lamps that are dim and not dark (common practice, no source).
    [Fact]
    public void A_nicked_wire_dims_its_own_house_and_no_other()
    {
        var nicked = Of(FaultKind.PairNicked, "pair of B");
        Assert.Equal("B1 B2 B3", string.Join(' ', Table.Tagged.Lamps.Where((_, i) => nicked.Look(i) == LampLook.Dim).Select(l => l.Name)));
        Assert.All(Enumerable.Range(0, 5), lamp => Assert.Equal(LampLook.Lit, nicked.Look(lamp)));
    }

    [Fact]
    public void Without_a_fault_every_lamp_gives_its_light() => Assert.All(Table.Healthy.LightShares, share => Assert.Equal(1, share));

    [Fact]
    public void Every_lamp_and_every_pair_has_four_faults_and_every_pack_of_cells_one() => Assert.Equal((8 * 4) + (2 * 4) + 1, Table.Rows.Length);

    [Theory]
    [InlineData(0.5, LampLook.Lit)]
    [InlineData(0.4999, LampLook.Dim)]
    [InlineData(0.01, LampLook.Dim)]
    [InlineData(0.0099, LampLook.Dark)]
    public void Half_the_light_is_dim_and_a_hundredth_is_dark(double share, LampLook look) => Assert.Equal(look, new Signature([share], [], []).Look(0));

    private static Signature Of(FaultKind kind, string place) => Table.Rows.Single(r => r.Fault.Kind == kind && r.Fault.Place == place).Signature;
}
