using System.Collections.Immutable;
using System.Globalization;
using Duskwright.Circuits.Fitting;
using Duskwright.Circuits.Metering;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;

namespace Duskwright.Study.Sums;

/// <summary>An unlabelled LED made out from one or two readings on the bench: current through it and voltage across it.</summary>
public static class MeasuredLamp
{
    // Makers' limits of a meter count as two deviations.
    private const double LimitSigmas = 2;
    private const double LongCurrentMilliamperes = 20;

    // Where its voltage is told, within the range of use.
    private const double ToldAmps = 5e-3;

    /// <summary>The colours that can be told apart by eye; each has a family of chips with a voltage of its own.</summary>
    public static ItemList<string> Colours { get; } = ["warm white", "white", "blue", "green", "yellow", "amber", "red"];

    /// <summary>Makes the lamp out.</summary>
    /// <param name="name">What the maker calls it.</param>
    /// <param name="colour">One of <see cref="Colours"/>.</param>
    /// <param name="readings">Current, mA, and voltage, V, of each reading; both above 0.</param>
    /// <returns>The part: its curve from the readings and what its colour tells (<see cref="LampFit"/>), its light as of a usual chip of the colour.</returns>
    public static LampPart Of(string name, string colour, ItemList<(double Milliamperes, double Volts)> readings)
    {
        var fit = LampFit.Of(readings.Select(Read).ToImmutableArray(), colour is "yellow" or "amber" or "red" ? LampPrior.Red : LampPrior.White);
        var (law, told) = (fit.Law, fit.VoltsAt(ToldAmps));
        var like = Catalogue.Parts.Lamps.FirstOrDefault(l => l.Kind == LampKind.Led && l.Colour == colour);
        return new LampPart
        {
            Id = $"own-{Slug.Of(name)}",
            Name = name,
            Colour = colour,
            ReferenceVoltage = Voltage.FromVolts(law.RefVolts),
            ReferenceCurrent = Current.FromMilliamperes(LampPrior.RefAmps * 1e3),
            Ideality = law.Ideality,
            SeriesResistance = Resistance.FromOhms(law.SeriesOhms),
            VoltageSpread = Voltage.FromVolts((told.High - told.Low) / 2),
            MostCurrent = Current.FromMilliamperes(LongCurrentMilliamperes),
            Intensity = like?.Intensity,
            IntensityCurrent = like?.IntensityCurrent,
            ViewingAngle = like?.ViewingAngle,
            Source = readings.Count == 0 ? "its colour alone" : $"read on the bench: {string.Join(", ", readings.Select(r => string.Create(CultureInfo.InvariantCulture, $"{r.Volts:0.###} V at {r.Milliamperes:0.###} mA")))}",
            Certainty = readings.Count == 0 ? Certainty.Assumed : Certainty.Measured,
        };
    }

    private static LampReading Read((double Milliamperes, double Volts) reading)
    {
        var amps = reading.Milliamperes / 1e3;
        return new LampReading(
            amps,
            reading.Volts,
            Meter.Fitting(Meter.Usual.CurrentRanges, amps).Show(amps).Error / LimitSigmas,
            Meter.Fitting(Meter.Usual.VoltageRanges, reading.Volts).Show(reading.Volts).Error / LimitSigmas);
    }
}
