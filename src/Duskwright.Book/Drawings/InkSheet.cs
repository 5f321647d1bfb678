using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Duskwright.Book.Drawings;

/// <summary>The inks and hands as a stylesheet, so that a line weighs the same on screen and on paper.</summary>
public static partial class InkSheet
{
    /// <summary>The stylesheet; the colours are custom properties named after the tones, <c>--pen</c> is the drawing's units to a millimetre, <c>--letters</c> enlarges lettering.</summary>
    /// <returns>CSS.</returns>
    public static string Css()
    {
        var css = new StringBuilder();
        foreach (var ink in Inks.All)
        {
            css.Append(CultureInfo.InvariantCulture, $".i-{ink.Name}{{fill:{Colour(ink.Fill)};stroke:{Colour(ink.Line)};stroke-linejoin:round");
            if (ink.Line != Tone.None)
            {
                css.Append(CultureInfo.InvariantCulture, $";stroke-width:{Pen(ink.Weight)}");
            }

            if (ink.Dash.Count > 0)
            {
                css.Append(";stroke-dasharray:").AppendJoin(' ', ink.Dash.Select(Pen));
            }

            if (ink.Opacity < 1)
            {
                css.Append(CultureInfo.InvariantCulture, $";opacity:{Trace.N(ink.Opacity)}");
            }

            css.Append("}\n");
        }

        foreach (var hand in Inks.Hands)
        {
            var face = hand.Face switch { FaceName.Speaks => "600 1em Fraunces,serif", FaceName.Murmurs => "italic 500 1em Fraunces,serif", FaceName.Strong => "600 1em Inter,sans-serif", _ => "400 1em Inter,sans-serif" };
            css.Append(CultureInfo.InvariantCulture, $".h-{hand.Name}{{font:{face};font-size:calc(var(--pen)*var(--letters,1)*{Trace.N(hand.Size)}px);fill:{Colour(hand.Tone)}");
            if (hand.Behind != Tone.None)
            {
                css.Append(CultureInfo.InvariantCulture, $";paint-order:stroke;stroke:{Colour(hand.Behind)};stroke-width:{Pen(0.9)};stroke-linejoin:round");
            }

            css.Append("}\n");
        }

        return css.ToString();
    }

    private static string Pen(double millimetres) => $"calc(var(--pen)*{Trace.N(millimetres)}px)";

    private static string Colour(Tone tone) => tone switch
    {
        Tone.None => "none",
        Tone.Lit => "color-mix(in srgb,var(--lamp) calc(var(--lit)*100%),var(--soft))",
        _ => $"var(--{Boundary().Replace(tone.ToString(), "-$1").TrimStart('-').ToLowerInvariant()})",
    };

    [GeneratedRegex("([A-Z]|[0-9])")]
    private static partial Regex Boundary();
}
