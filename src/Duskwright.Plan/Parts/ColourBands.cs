namespace Duskwright.Plan.Parts;

/// <summary>The colour bands of a resistor (IEC 60062:2016, four bands, 5 %).</summary>
public static class ColourBands
{
    private static readonly string[] Digits = ["black", "brown", "red", "orange", "yellow", "green", "blue", "violet", "grey", "white"];

    /// <summary>The bands of a value with two figures.</summary>
    /// <param name="ohms">Resistance in Ω, from 1 to 99 MΩ.</param>
    /// <returns>Two figures, multiplier and tolerance: "red, violet, brown, gold"; none where two figures do not give the value.</returns>
    public static string? Of(double ohms)
    {
        if (ohms is < 1 or > 99e6)
        {
            return null;
        }

        var power = (int)Math.Floor(Math.Log10(ohms) + 1e-9) - 1;
        var figures = ohms / Math.Pow(10, power);
        var whole = (int)Math.Round(figures);
        if (Math.Abs(figures - whole) > 1e-6 || whole > 99)
        {
            return null;
        }

        return $"{Digits[whole / 10]}, {Digits[whole % 10]}, {(power == -1 ? "gold" : Digits[power])}, gold";
    }
}
