using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Lists;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Figures;

namespace Duskwright.Towns;

/// <summary>The unit in which the maker measures: lengths are shown in it, and a bare number that is typed is taken to be in it.</summary>
/// <remarks>It belongs to the maker and not to a town, so it lies in a file of its own beside the maker's towns.</remarks>
public sealed record LengthRule
{
    private const string FileName = "lengths.txt";
    private const double MetresPerInch = 0.0254;

    private LengthRule(string unit) => Unit = unit;

    /// <summary>All there are, the usual first.</summary>
    public static ItemList<LengthRule> All { get; } = [new("mm"), new("cm"), new("in")];

    /// <summary>What drills are told in, whatever the maker measures the board in.</summary>
    public static LengthRule OfDrills => All[0];

    /// <summary>mm, cm or in.</summary>
    public string Unit { get; }

    /// <summary>A length like those that would do, for a sentence.</summary>
    public string Example => Unit switch { "mm" => "a length like 47, 4.7 cm or 1 3/4 in", "cm" => "a length like 4.7, 47 mm or 1 3/4 in", _ => "a length like 1 3/4, 47 mm or 4.7 cm" };

    /// <summary>What positions on the board may be rounded to, the finest first; as a rule is divided.</summary>
    public ItemList<Length> Steps => Unit == "in"
        ? new[] { 1.0 / 16, 1.0 / 8, 1.0 / 4, 1.0 / 2, 1 }.Select(i => Length.FromMetres(i * MetresPerInch)).ToItemList()
        : new[] { 1.0, 5, 10, 25 }.Select(Length.FromMillimetres).ToItemList();

    /// <summary>How far an arrow key moves what is chosen on the board.</summary>
    public Length Nudge => Steps[Unit == "in" ? 2 : 1];

    /// <summary>How far it moves it with Shift held.</summary>
    public Length FineNudge => Steps[0];

    /// <summary>A step as a rule names it: 5 mm, 0.5 cm, 1/4 in.</summary>
    /// <param name="step">One of the steps.</param>
    /// <returns>A number and the unit.</returns>
    public string StepWords(Length step) => Unit == "in" && step.Metres < MetresPerInch ? string.Create(CultureInfo.InvariantCulture, $"1/{Math.Round(MetresPerInch / step.Metres)} in") : Words(step);

    /// <summary>A length as a field shows it.</summary>
    /// <param name="length">The length; none where nobody has said it.</param>
    /// <returns>A number and the unit; nothing for none.</returns>
    public string Words(Length? length) => length is not { } l ? "" : Unit switch
    {
        "mm" => string.Create(CultureInfo.InvariantCulture, $"{l.Millimetres:0.#} mm"),
        "cm" => string.Create(CultureInfo.InvariantCulture, $"{l.Metres * 100:0.##} cm"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{l.Metres / MetresPerInch:0.###} in"),
    };

    /// <summary>A figure as it is read on the screen.</summary>
    /// <param name="figure">The figure.</param>
    /// <returns>Its value with its unit.</returns>
    public string Words(Figure figure) => Words(figure.Value, figure.Unit);

    /// <summary>A value as it is read on the screen; one that is no length as it is read everywhere.</summary>
    /// <param name="value">The value in the unit given.</param>
    /// <param name="unit">Its unit.</param>
    /// <returns>The value with its unit.</returns>
    public string Words(double value, string unit) => (unit, Unit) switch
    {
        ("m", "in") => FigureText.Of(value / MetresPerInch, "in"),
        ("m", "cm") when Math.Abs(value) < 1 => FigureText.Of(100 * value, "cm"),
        _ => FigureText.Of(value, unit),
    };

    /// <summary>The ends between which a figure may lie.</summary>
    /// <param name="figure">The figure.</param>
    /// <returns>Both, with their unit; none where they are not known or read the same.</returns>
    public string? Range(Figure figure) =>
        (figure.Unit, Unit) is not ("m", "cm" or "in") || figure is not { Low: { } low, High: { } high } ? FigureText.Range(figure)
        : (Words(low, "m"), Words(high, "m")) is var (from, to) && from == to ? null
        : $"{from} to {to}";

    /// <summary>Reads what was typed.</summary>
    /// <param name="text">A number, with or without a unit.</param>
    /// <returns>The length; none where it is no length.</returns>
    public Length? Read(string text) => LengthText.Read(text, Unit)?.Length;

    /// <summary>Reads two lengths typed side by side: a bare number beside one with a unit is meant in that unit, as in "60 cm, 40".</summary>
    /// <param name="one">The first as it was typed.</param>
    /// <param name="other">The second as it was typed.</param>
    /// <returns>Both; none for one that is no length.</returns>
    public (Length? One, Length? Other) ReadBoth(string one, string other) => (
        LengthText.Read(one, LengthText.UnitOf(other) ?? Unit)?.Length,
        LengthText.Read(other, LengthText.UnitOf(one) ?? Unit)?.Length);

    /// <summary>The rule that was chosen last.</summary>
    /// <param name="home">The folder of the maker's towns; none where nothing is kept.</param>
    /// <returns>The rule; the usual one where none has been chosen, or none that is known here.</returns>
    public static LengthRule KeptIn(string? home)
    {
        if (home is null || !File.Exists(Path.Combine(home, FileName)))
        {
            return All[0];
        }

        var kept = File.ReadAllText(Path.Combine(home, FileName)).Trim();
        return All.FirstOrDefault(r => r.Unit == kept) ?? All[0];
    }

    /// <summary>Keeps the rule for the next time.</summary>
    /// <param name="home">The folder of the maker's towns.</param>
    public void KeepIn(string home)
    {
        Directory.CreateDirectory(home);
        File.WriteAllText(Path.Combine(home, FileName), $"{Unit}\n");
    }
}
