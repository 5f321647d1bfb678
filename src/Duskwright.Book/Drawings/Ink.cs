using Duskwright.Plan;

namespace Duskwright.Book.Drawings;

/// <summary>How a stroke is drawn.</summary>
/// <param name="Name">A word of its own, unique among the inks.</param>
/// <param name="Fill">Tone inside; none for an open stroke.</param>
/// <param name="Line">Tone of the line; none for no line.</param>
/// <param name="Weight">Line width, mm on paper. ISO 128 series: 0.18, 0.25, 0.35, 0.5.</param>
/// <param name="Opacity">0 clear to 1 covering.</param>
public sealed record Ink(string Name, Tone Fill = Tone.None, Tone Line = Tone.None, double Weight = 0, double Opacity = 1)
{
    /// <summary>Lengths of dash and gap in turn, mm on paper; empty for a whole line.</summary>
    public ItemList<double> Dash { get; init; } = [];
}
