namespace Duskwright.Circuits.Metering;

/// <summary>What a display shows.</summary>
/// <param name="Shown">V or A; none when it is over range.</param>
/// <param name="Error">How far off it may be either way, V or A, rounding included.</param>
public sealed record MeterReading(double? Shown, double Error);
