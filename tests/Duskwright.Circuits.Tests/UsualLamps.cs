using Duskwright.Circuits.Lamps;

namespace Duskwright.Circuits.Tests;

/// <summary>Lamps by the curves that the trade reckons with. Source: common practice, no source.</summary>
internal static class UsualLamps
{
    private const double ThermalVolts = LedLaw.BoltzmannOverCharge * LedLaw.RoomKelvin;

    /// <summary>V = 2.70 + 0.055·ln(I/1 mA) + 12 Ω·(I − 1 mA).</summary>
    internal static LedLaw White { get; } = new(2.70, 1e-3, 0.055 / ThermalVolts, 12);

    /// <summary>V = 1.75 + 0.05·ln(I/1 mA) + 8 Ω·(I − 1 mA).</summary>
    internal static LedLaw Amber { get; } = new(1.75, 1e-3, 0.05 / ThermalVolts, 8);

    /// <summary>Lit it takes 18 mA at 3 V, dark 1 mA; lit two thirds of the time from 2 V on.</summary>
    internal static FlickerLaw Flickering { get; } = new(new LedLaw(3.0, 18e-3, 0.05 / ThermalVolts, 60), 1e-3, 0.65, 2.0);

    /// <summary>A 6 V, 50 mA filament lamp.</summary>
    internal static FilamentLaw Filament { get; } = new(6, 0.05);

    /// <summary>A lamp of one fixed voltage, or of a threshold and a resistance: an ideality of 0.0001 moves it by 20 µV over a thousandfold current.</summary>
    internal static LedLaw Fixed(double volts, double seriesOhms = 0) => new(volts + (seriesOhms * 1e-3), 1e-3, 0.0001, seriesOhms);

    /// <summary>A diode card: v = n·V_T·ln(i/I_S) + i·R_S, without the "+ 1" in the logarithm.</summary>
    internal static LedLaw Card(double saturationAmps, double ideality, double seriesOhms, double kelvin)
    {
        const double RefAmps = 1e-3;
        var refVolts = (ideality * LedLaw.BoltzmannOverCharge * kelvin * Math.Log(RefAmps / saturationAmps)) + (seriesOhms * RefAmps);
        return new LedLaw(refVolts, RefAmps, ideality, seriesOhms, kelvin);
    }

    /// <summary>The card of a model in led-spice-models.csv at 300.15 K; "+0.1" after it means 0.1 V more at every current.</summary>
    internal static LedLaw CardOf(string model)
    {
        var (name, more) = model.Split('+') is [var plain, var shift] ? (plain, double.Parse(shift)) : (model, 0);
        var row = ReferenceRows.Of("led-spice-models.csv").Single(r => r["model"] == name);
        var law = Card(row.Number("saturation_current_a"), row.Number("ideality"), row.Number("series_resistance_ohm"), 300.15);
        return law with { RefVolts = law.RefVolts + more };
    }
}
