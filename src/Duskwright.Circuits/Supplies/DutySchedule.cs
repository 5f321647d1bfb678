using System.Collections.Immutable;

namespace Duskwright.Circuits.Supplies;

/// <summary>When the lamps burn: spells of light with rests between, begun again after the last.</summary>
public sealed record DutySchedule
{
    /// <summary>24 hours, s.</summary>
    public const double SecondsPerDay = 86400;

    /// <summary>Makes a schedule.</summary>
    /// <param name="spells">At least one; light lasts more than zero and rest zero seconds or more.</param>
    /// <exception cref="ArgumentException">There is no spell, or one is without light or has less than no rest.</exception>
    public DutySchedule(ImmutableArray<DutySpell> spells)
    {
        if (spells.IsEmpty || spells.Any(s => !(s.LitSeconds > 0) || !(s.RestSeconds >= 0)))
        {
            throw new ArgumentException("A schedule has at least one spell, each with light above 0 s and rest of 0 s or more.", nameof(spells));
        }

        Spells = spells;
    }

    /// <summary>The spells in turn.</summary>
    public ImmutableArray<DutySpell> Spells { get; }

    /// <summary>The same hours every day.</summary>
    /// <param name="litSecondsPerDay">Above 0 to 86,400 s.</param>
    /// <returns>The schedule.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is not within a day.</exception>
    public static DutySchedule Daily(double litSecondsPerDay) => OfDays([litSecondsPerDay]);

    /// <summary>Days one after another, as of a fair: three hours on Friday, seven on Saturday, none on Sunday.</summary>
    /// <param name="litSecondsEachDay">Time lit on each day, 0 to 86,400 s; the first day has some.</param>
    /// <returns>The schedule; after the last day it begins again with the first.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A day's time is not within a day, or the first day is dark.</exception>
    public static DutySchedule OfDays(ImmutableArray<double> litSecondsEachDay)
    {
        var spells = ImmutableArray.CreateBuilder<DutySpell>();
        foreach (var lit in litSecondsEachDay)
        {
            if (!(lit >= 0 && lit <= SecondsPerDay) || (lit == 0 && spells.Count == 0))
            {
                throw new ArgumentOutOfRangeException(nameof(litSecondsEachDay), lit, "Lamps burn at most 86400 s a day, and more than 0 s on the first.");
            }

            if (lit == 0)
            {
                spells[^1] = spells[^1] with { RestSeconds = spells[^1].RestSeconds + SecondsPerDay };
            }
            else
            {
                spells.Add(new DutySpell(lit, SecondsPerDay - lit));
            }
        }

        return new DutySchedule(spells.ToImmutable());
    }
}
