namespace Duskwright.Light.Lamps;

/// <summary>How lamps age over the hours they burn.</summary>
public static class LampAge
{
    /// <summary>Share of its light at which an LED counts as spent: L70, seven tenths.</summary>
    public const double SpentShare = 0.7;

    /// <summary>Hours to L70 of LEDs sold for houses at their rated current, the least and the most: 10 000 and 50 000, from memory; makers' tables of small epoxy lamps begin there, reports end at 36 000 to 60 000 h.</summary>
    public static (double Least, double Most) LedHours => (10_000, 50_000);

    /// <summary>Hours of a small filament lamp at its rated voltage, the least and the most: 1000 and 5000, from memory.</summary>
    public static (double Least, double Most) FilamentHours => (1_000, 5_000);

    /// <summary>Life of a filament lamp over that at its rated voltage: (volts ÷ rated)^−12, usual exponent of lamp handbooks, from memory.</summary>
    /// <param name="shareOfRatedVolts">Its voltage over its rated voltage, more than 0.</param>
    /// <returns>The factor.</returns>
    public static double FilamentLifeFactor(double shareOfRatedVolts) => Math.Pow(shareOfRatedVolts, -12);

    /// <summary>Hours to a share of the first light, by the exponential law Φ = B·exp(−α·t) (IES TM-21).</summary>
    /// <param name="first">B, light at the start as a share; about 1.</param>
    /// <param name="perHour">α, 1/h, more than 0.</param>
    /// <param name="share">The share to reach.</param>
    /// <returns>t = ln(B/share)/α, h.</returns>
    public static double HoursTo(double first, double perHour, double share) => Math.Log(first / share) / perHour;

    /// <summary>Share of the light that is left after some hours, for a lamp that reaches L70 after others.</summary>
    /// <param name="hours">Hours burnt.</param>
    /// <param name="hoursToSpent">Hours to L70.</param>
    /// <returns>0.7^(t/t₇₀), the same law with B = 1.</returns>
    public static double ShareLeft(double hours, double hoursToSpent) => Math.Pow(SpentShare, hours / hoursToSpent);
}
