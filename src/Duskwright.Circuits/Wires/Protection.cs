using System.Collections.Immutable;

namespace Duskwright.Circuits.Wires;

/// <summary>Every short there may be, with every fuse there is.</summary>
/// <remarks>
/// The short's own resistance is swept from a dead short to a kilo-ohm: the wire is hottest just below the trip current, the spot itself where its
/// resistance matches the rest of the circuit. A current between hold and trip is taken as lasting for ever, with the fuse's least
/// resistance; whether a dead short opens it is judged with its most.
/// </remarks>
public static class Protection
{
    /// <summary>Card browns from about here on, °C: typical, from memory.</summary>
    public const double ScorchCelsius = 120;

    /// <summary>A fuse that holds twice the load does not creep open when it is warm: common practice, no source.</summary>
    public const double LoadMargin = 2;

    // Twenty steps to a decade, so that neighbours differ by an eighth.
    private const double LeastShortOhms = 0.01;
    private const double MostShortOhms = 1000;
    private const int StepsPerDecade = 20;

    /// <summary>Tries every short on wiring with a fuse or with none.</summary>
    /// <param name="question">The supply and its wiring.</param>
    /// <param name="fuse">The fuse; none for bare wiring.</param>
    /// <returns>All shorts: by source, near then far, dead short first. The short at which a fuse only just stays shut is among them.</returns>
    public static ImmutableArray<SweptShort> Sweep(ProtectionQuestion question, FuseRange? fuse)
    {
        var shorts = ImmutableArray.CreateBuilder<SweptShort>();
        foreach (var source in question.Sources)
        {
            foreach (var far in (bool[])[false, true])
            {
                var pathOhms = (far ? question.FarOhms : question.NearOhms) + (fuse?.LeastOhms ?? 0);
                var ohms = Steps().ToList();
                if (fuse is not null && (source.OpenVolts / fuse.TripAmps) - source.Ohms - pathOhms is > LeastShortOhms and < MostShortOhms and var justShut)
                {
                    // A hair more than the resistance that trips it.
                    ohms.Add(justShut * (1 + 1e-9));
                }

                shorts.AddRange(ohms.Order().Select(o => One(question, fuse, source, far, pathOhms, o)));
            }
        }

        return shorts.ToImmutable();
    }

    /// <summary>Judges a fuse, or bare wiring.</summary>
    /// <param name="question">The supply and its wiring.</param>
    /// <param name="fuse">The fuse; none for bare wiring.</param>
    /// <returns>The worst that can last.</returns>
    public static ProtectionVerdict Judge(ProtectionQuestion question, FuseRange? fuse)
    {
        var shorts = Sweep(question, fuse);
        var hottest = shorts.MaxBy(s => s.WireCelsius);
        return new ProtectionVerdict(
            fuse,
            fuse is null || (fuse.HoldAmps >= LoadMargin * question.LoadAmps && question.Sources.All(s => s.OpenVolts <= fuse.MostVolts)),
            fuse is not null && question.Sources.All(s => s.AmpsInto(Math.Max(question.NearOhms, question.FarOhms) + fuse.MostOhms) > fuse.TripAmps),
            hottest,
            shorts.MaxBy(s => s.ShortWatts),
            hottest.WireCelsius > ScorchCelsius);
    }

    /// <summary>The fuse to fit.</summary>
    /// <param name="question">The supply and its wiring.</param>
    /// <param name="fuses">What there is.</param>
    /// <returns>
    /// Of those that carry the load and are sure to open, the one that leaves the coolest wire; none when no fuse does both, which has to be said.
    /// </returns>
    public static ProtectionVerdict? Choose(ProtectionQuestion question, ImmutableArray<FuseRange> fuses) =>
        fuses.Select(f => Judge(question, f)).Where(v => v.CarriesLoad && v.OpensEverywhere).OrderBy(v => v.Hottest.WireCelsius).ThenBy(v => v.Fuse!.HoldAmps).FirstOrDefault();

    private static IEnumerable<double> Steps()
    {
        var decades = Math.Log10(MostShortOhms / LeastShortOhms);
        for (var i = 0; i <= StepsPerDecade * decades; i++)
        {
            yield return LeastShortOhms * Math.Pow(10, i / (double)StepsPerDecade);
        }
    }

    private static SweptShort One(ProtectionQuestion question, FuseRange? fuse, ShortSource source, bool far, double pathOhms, double shortOhms)
    {
        var amps = source.AmpsInto(pathOhms + shortOhms);
        var opens = fuse is not null && amps > fuse.TripAmps;
        return new SweptShort(
            source.Name,
            far,
            shortOhms,
            amps,
            opens,
            opens ? question.RoomCelsius : WireHeat.SteadyCelsius(amps, question.CopperDiameterMetres, question.RoomCelsius),
            opens ? 0 : amps * amps * shortOhms);
    }
}
