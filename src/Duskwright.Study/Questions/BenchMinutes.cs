namespace Duskwright.Study.Questions;

/// <summary>Hands-on minutes of one piece of work, least and most, for a practised hand and a beginner.</summary>
/// <param name="Words">The work: "glaze one window".</param>
/// <param name="Practised">Least and most of a practised hand.</param>
/// <param name="Beginner">Least and most of a beginner.</param>
/// <remarks>Common practice, no source.</remarks>
internal sealed record BenchMinutes(string Words, (double Least, double Most) Practised, (double Least, double Most) Beginner)
{
    internal static BenchMinutes Plan { get; } = new("plan and code a building's lamps", (5, 10), (10, 20));

    internal static BenchMinutes Paint { get; } = new("black and white inside", (10, 20), (15, 30));

    internal static BenchMinutes Torch { get; } = new("torch test, seal leaks", (3, 5), (5, 15));

    internal static BenchMinutes Glaze { get; } = new("glaze and frost a window", (2, 4), (4, 8));

    internal static BenchMinutes Baffle { get; } = new("a baffle between two rooms", (3, 6), (5, 10));

    internal static BenchMinutes BareLamp { get; } = new("a chip with wires, resistor and sleeve", (8, 12), (15, 25));

    internal static BenchMinutes Tag { get; } = new("test a lamp, mark plus, tag it", (1, 2), (2, 4));

    internal static BenchMinutes Fit { get; } = new("fit a lamp, anchor and loop", (3, 6), (5, 10));

    internal static BenchMinutes Drill { get; } = new("drill and line a hole", (2, 4), (3, 6));

    internal static BenchMinutes Feed { get; } = new("feed a pair", (1, 3), (3, 10));

    internal static BenchMinutes Join { get; } = new("join a pair at the bank", (2, 3), (4, 6));

    internal static BenchMinutes Read { get; } = new("read and log a house", (1, 2), (2, 4));

    internal static BenchMinutes Close { get; } = new("close a building", (6, 10), (10, 20));

    internal static BenchMinutes GlueIn { get; } = new("glue a house in, seal its gap", (5, 10), (10, 15));

    internal static BenchMinutes Switch { get; } = new("a switch way with its label", (8, 12), (15, 25));

    /// <summary>The middle of a hand's range.</summary>
    internal double Of(bool beginner) => beginner ? (Beginner.Least + Beginner.Most) / 2 : (Practised.Least + Practised.Most) / 2;
}
