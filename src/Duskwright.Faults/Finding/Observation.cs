using System.Collections.Immutable;
using Duskwright.Faults.Signatures;

namespace Duskwright.Faults.Finding;

/// <summary>What a maker has seen, and read if there is a meter.</summary>
/// <param name="Looks">How lamps look, by their place among the tagged lamps; lamps not looked at are left out.</param>
/// <param name="Readings">Currents of packs, by their place among the tagged packs; empty without a meter.</param>
public sealed record Observation(ImmutableDictionary<int, LampLook> Looks, ImmutableDictionary<int, AmpsReading> Readings)
{
    /// <summary>Volts of packs, by their place among the tagged packs; empty where none were read.</summary>
    public ImmutableDictionary<int, VoltsReading> Volts { get; init; } = ImmutableDictionary<int, VoltsReading>.Empty;

    /// <summary>What a meter showed at pairs taken off the bank; empty where none was.</summary>
    public ImmutableArray<PairFinding> OffBank { get; init; } = [];

    /// <summary>Nothing seen yet.</summary>
    public static Observation Nothing { get; } = new(ImmutableDictionary<int, LampLook>.Empty, ImmutableDictionary<int, AmpsReading>.Empty);

    /// <summary>With one more lamp looked at.</summary>
    /// <param name="lamp">Its place among the tagged lamps.</param>
    /// <param name="look">How it looks.</param>
    /// <returns>The fuller observation.</returns>
    public Observation Saw(int lamp, LampLook look) => this with { Looks = Looks.SetItem(lamp, look) };

    /// <summary>With one more pack's current read.</summary>
    /// <param name="pack">Its place among the tagged packs.</param>
    /// <param name="reading">The reading.</param>
    /// <returns>The fuller observation.</returns>
    public Observation Read(int pack, AmpsReading reading) => this with { Readings = Readings.SetItem(pack, reading) };

    /// <summary>With one more pack's volts read.</summary>
    /// <param name="pack">Its place among the tagged packs.</param>
    /// <param name="reading">The reading.</param>
    /// <returns>The fuller observation.</returns>
    public Observation Read(int pack, VoltsReading reading) => this with { Volts = Volts.SetItem(pack, reading) };
}
