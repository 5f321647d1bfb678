using System.Collections.Immutable;

namespace Duskwright.Study.Questions;

/// <summary>What has been said so far; the rest is what a beginner usually has.</summary>
public sealed record Given
{
    private ImmutableDictionary<string, double> Numbers { get; init; } = ImmutableDictionary<string, double>.Empty;

    private ImmutableDictionary<string, string> Chosen { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>Nothing said yet.</summary>
    public static Given Nothing { get; } = new();

    /// <summary>The number said, or the usual one.</summary>
    /// <param name="asked">What was asked.</param>
    public double this[AskedNumber asked] => Numbers.GetValueOrDefault(asked.Option, asked.Usual);

    /// <summary>The id chosen, or the usual one.</summary>
    /// <param name="asked">What was asked.</param>
    public string this[AskedChoice asked] => Chosen.GetValueOrDefault(asked.Option, asked.Usual);

    /// <summary>Says a number.</summary>
    /// <param name="asked">What was asked.</param>
    /// <param name="number">The number.</param>
    /// <returns>All that was said, with it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It is not allowed.</exception>
    public Given With(AskedNumber asked, double number) => number >= asked.Least && number <= asked.Most && (!asked.Whole || double.IsInteger(number))
        ? this with { Numbers = Numbers.SetItem(asked.Option, number) }
        : throw new ArgumentOutOfRangeException(nameof(number), number, $"{asked.Label}: {asked.Least} to {asked.Most} is allowed.");

    /// <summary>Chooses.</summary>
    /// <param name="asked">What was asked.</param>
    /// <param name="id">The id of one of its choices.</param>
    /// <returns>All that was said, with it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such choice.</exception>
    public Given With(AskedChoice asked, string id) => asked.Choices.Any(c => c.Id == id)
        ? this with { Chosen = Chosen.SetItem(asked.Option, id) }
        : throw new ArgumentOutOfRangeException(nameof(id), id, $"{asked.Label}: {string.Join(", ", asked.Choices.Select(c => c.Id))} are allowed.");
}
