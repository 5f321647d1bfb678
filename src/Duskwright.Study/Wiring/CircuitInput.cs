using Duskwright.Plan;
using Duskwright.Plan.Parts;

namespace Duskwright.Study.Wiring;

/// <summary>Everything one circuit's computation reads, and nothing else: packs that share a return, and what hangs on them.</summary>
internal sealed record CircuitInput(ItemList<PackInput> Packs, double ReturnOhms, double LitHoursPerDay, bool Coarse)
{
    // Few circuits share a supply; hashing the whole would cost more than comparing.
    public override int GetHashCode() => HashCode.Combine(StringComparer.Ordinal.GetHashCode(Packs[0].Supply), Coarse);
}

/// <summary>A supply and its switches.</summary>
internal sealed record PackInput(
    string Supply, SupplyPart Part, int Series, int Parallel, double ChargeLeft, double FuseOhms, ItemList<GroupInput> Groups);

/// <summary>A switch and its pairs.</summary>
internal sealed record GroupInput(string Id, double SwitchOhms, ItemList<PairInput> Pairs)
{
    /// <summary>Shared pairs before the houses' own, each after the one that feeds it; none where each house has its pair from the switch.</summary>
    internal ItemList<SharedPairInput> Shared { get; init; } = [];
}

/// <summary>A pair that several houses share, from one junction to another; junction 0 is the switch.</summary>
internal sealed record SharedPairInput(int From, int To, double ConductorOhms)
{
    /// <summary>The tap it leads to, or the building it goes on from.</summary>
    internal string Run { get; init; } = "";

    /// <summary>Whether it is a minus wire alone.</summary>
    internal bool OnlyReturn { get; init; }
}

/// <summary>A pair from the bank to a house and the lamps at its end.</summary>
internal sealed record PairInput(string Building, double ConductorOhms, ItemList<LampInput> Lamps)
{
    /// <summary>The junction it starts at; 0 is the switch.</summary>
    internal int Junction { get; init; }

    /// <summary>Its minus wire where that is not like its plus wire.</summary>
    internal double? ReturnOhms { get; init; }
}

/// <summary>A lamp and all resistance in its own branch.</summary>
internal sealed record LampInput(string Name, LampPart Part, double BranchOhms);
