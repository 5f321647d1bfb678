namespace Duskwright.Circuits.Tests.Supplies;

/// <summary>A time under a load, or a rest.</summary>
/// <param name="Load">The load; none for a rest.</param>
/// <param name="Seconds">How long, s, more than zero.</param>
internal sealed record BenchSpell(BenchLoad? Load, double Seconds)
{
    /// <summary>How long, s.</summary>
    public double Seconds { get; init; } = Seconds > 0
        ? Seconds
        : throw new ArgumentOutOfRangeException(nameof(Seconds), Seconds, "A spell lasts more than 0 s.");
}
