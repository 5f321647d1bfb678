using System.Text.RegularExpressions;

namespace Duskwright.Plan.Checks;

/// <summary>Words and voltages by which makers and labels mark what belongs to the mains.</summary>
internal static partial class MainsMarks
{
    internal static bool On(string name, string id) => Marks().IsMatch(name) || Marks().IsMatch(id);

    // The mains voltages of the world, present and past (IEC 60038 and common practice, from memory), and alternating current of any voltage.
    [GeneratedRegex(@"\bmains\b|(?<![a-z])v?a\.?c\.?(?![a-z])|(?<![\d.,])(100|110|115|120|127|220|230|240)[\s-]*v(ac|olts?)?(?![a-z])", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Marks();
}
