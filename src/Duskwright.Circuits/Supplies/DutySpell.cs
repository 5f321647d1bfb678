namespace Duskwright.Circuits.Supplies;

/// <summary>Light and the rest after it.</summary>
/// <param name="LitSeconds">Time the lamps burn, s.</param>
/// <param name="RestSeconds">Time they are dark afterwards, s; zero for none.</param>
public readonly record struct DutySpell(double LitSeconds, double RestSeconds);
