using System.Collections.Immutable;
using Duskwright.Circuits.Supplies;

namespace Duskwright.Circuits.Tests.Supplies;

/// <summary>One cell run down as on a test bench: loads and rests in turn, until it no longer holds the end voltage under load.</summary>
/// <remarks>
/// Such are the application tests of IEC 60086-2: so many seconds of each minute or minutes of each hour, so many hours a day. Within a
/// step the current is that of the step's middle (midpoint rule; Hairer, Nørsett and Wanner, Solving Ordinary Differential Equations I,
/// section II.1, from memory).
/// </remarks>
internal static class BenchDischarge
{
    private const double StepShare = 0.002;

    // A cell this near empty holds no voltage.
    private const double DryShare = 5e-4;

    // A year under load: a load that no cell notices ends here.
    private const double MostSeconds = 3.15e7;

    /// <summary>Pulses of one load, a number of hours a day, with the rest of the 24 hours free.</summary>
    /// <param name="load">The load.</param>
    /// <param name="onSeconds">Length of a pulse, s.</param>
    /// <param name="periodSeconds">From one pulse to the next, s, not less.</param>
    /// <param name="secondsPerDay">Time of each day over which there are pulses, s, at most 86,400.</param>
    /// <returns>One day, to be repeated.</returns>
    public static ImmutableArray<BenchSpell> Day(BenchLoad load, double onSeconds, double periodSeconds, double secondsPerDay)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(periodSeconds, onSeconds);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(secondsPerDay, DutySchedule.SecondsPerDay);
        var day = ImmutableArray.CreateBuilder<BenchSpell>();
        var pulses = Math.Max(1, (int)Math.Round(secondsPerDay / periodSeconds));
        for (var pulse = 1; pulse <= pulses; pulse++)
        {
            day.Add(new BenchSpell(load, onSeconds));
            var rest = pulse < pulses ? periodSeconds - onSeconds : DutySchedule.SecondsPerDay - ((pulses - 1) * periodSeconds) - onSeconds;
            if (rest > 0)
            {
                day.Add(new BenchSpell(null, rest));
            }
        }

        return day.ToImmutable();
    }

    /// <summary>Runs a cell down.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="start">Its wells at the start.</param>
    /// <param name="spells">Loads and rests, repeated until the end; at least one has a load.</param>
    /// <param name="endVolts">Voltage under load at which it ends, V.</param>
    /// <returns>What it gave.</returns>
    /// <exception cref="ArgumentException">No spell has a load.</exception>
    public static BenchResult Run(CellLaw cell, CellState start, ImmutableArray<BenchSpell> spells, double endVolts)
    {
        if (spells.All(s => s.Load is null))
        {
            throw new ArgumentException("A discharge has at least one spell with a load.", nameof(spells));
        }

        var result = new BenchResult(0, 0, start);
        while (result.LoadedSeconds < MostSeconds)
        {
            foreach (var spell in spells)
            {
                if (spell.Load is null)
                {
                    result = result with { State = cell.Advance(result.State, 0, spell.Seconds) };
                    continue;
                }

                var (after, holds) = Under(cell, spell.Load, spell.Seconds, endVolts, result);
                result = after;
                if (!holds)
                {
                    return result;
                }
            }
        }

        return result;
    }

    private static (BenchResult After, bool Holds) Under(CellLaw cell, BenchLoad load, double spellSeconds, double endVolts, BenchResult before)
    {
        var (state, seconds, coulombs, left) = (before.State, before.LoadedSeconds, before.Coulombs, spellSeconds);
        var (amps, volts) = On(cell, load, state);
        while (left > 0 && Holds(cell, state, volts, endVolts))
        {
            var step = Math.Min(left, StepShare * cell.ChargeCoulombs / amps);
            var (middle, _) = On(cell, load, cell.Advance(state, amps, step / 2));
            middle = double.IsNaN(middle) ? amps : middle;
            var next = cell.Advance(state, middle, step);
            var (nextAmps, nextVolts) = On(cell, load, next);
            var share = Holds(cell, next, nextVolts, endVolts) || !(volts > nextVolts) ? 1 : Math.Clamp((volts - endVolts) / (volts - nextVolts), 0, 1);
            (state, amps, volts, left) = (next, nextAmps, nextVolts, left - step);
            (seconds, coulombs) = (seconds + (share * step), coulombs + (share * step * middle));
        }

        return (new BenchResult(seconds, coulombs, state), Holds(cell, state, volts, endVolts));
    }

    private static bool Holds(CellLaw cell, CellState state, double volts, double endVolts) => volts >= endVolts && cell.AvailableLeft(state) > DryShare;

    private static (double Amps, double Volts) On(CellLaw cell, BenchLoad load, CellState state)
    {
        var (openVolts, ohms) = cell.At(state);
        return load.On(openVolts, ohms);
    }
}
