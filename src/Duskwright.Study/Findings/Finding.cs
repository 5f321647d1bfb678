using System.Globalization;
using System.Text;
using Duskwright.Plan;
using Duskwright.Plan.Edits;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Findings;

/// <summary>Something worth saying about the town: a rule, what it speaks of, the numbers, and what would help.</summary>
public sealed record Finding
{
    /// <summary>The rule's short name, stable: <c>pack-fades</c>.</summary>
    public required string Rule { get; init; }

    /// <summary>How much it matters.</summary>
    public required Severity Severity { get; init; }

    /// <summary>What it speaks of.</summary>
    public required Subject Subject { get; init; }

    /// <summary>One sentence with the figures' places marked <c>{0}</c>, <c>{1}</c>: "Pack 3 falls below half light after {0}; the show is {1}."</summary>
    public required string Words { get; init; }

    /// <summary>The figures, in the order of their places.</summary>
    public ItemList<Figure> Figures { get; init; } = [];

    /// <summary>What would help, in words; none where there is nothing to mend.</summary>
    public string? Remedy { get; init; }

    /// <summary>Edits that do it, the best first.</summary>
    public ItemList<TownEdit> Edits { get; init; } = [];

    /// <summary>The sentence with its numbers in place.</summary>
    public string Text => string.Format(CultureInfo.InvariantCulture, CompositeFormat.Parse(Words), [.. Figures.Select(FigureText.Of)]);
}

/// <summary>How much a finding matters.</summary>
public enum Severity
{
    /// <summary>All is well; worth knowing.</summary>
    Sound,

    /// <summary>Worth a look.</summary>
    Look,

    /// <summary>Spoils the show, or can do harm.</summary>
    Spoils,
}

/// <summary>What a finding, a page or a proposal speaks of.</summary>
/// <param name="Kind">The kind of thing.</param>
/// <param name="Key">Its key within the kind; empty for the town.</param>
public sealed record Subject(SubjectKind Kind, string Key)
{
    /// <summary>The town as a whole.</summary>
    public static Subject Town { get; } = new(SubjectKind.Town, "");

    /// <summary>A building.</summary>
    /// <param name="key">Its key.</param>
    /// <returns>The subject.</returns>
    public static Subject Building(string key) => new(SubjectKind.Building, key);

    /// <summary>A supply.</summary>
    /// <param name="id">Its id.</param>
    /// <returns>The subject.</returns>
    public static Subject Supply(string id) => new(SubjectKind.Supply, id);
}

/// <summary>Kinds of things that findings speak of.</summary>
public enum SubjectKind
{
    /// <summary>The town as a whole.</summary>
    Town,

    /// <summary>A building.</summary>
    Building,

    /// <summary>A supply.</summary>
    Supply,
}
