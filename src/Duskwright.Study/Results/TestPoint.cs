using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Results;

/// <summary>One test of a building: what to do, what should light, and what a meter should read.</summary>
/// <param name="When">The stage: "lamps on the bench".</param>
/// <param name="Do">What to touch to what.</param>
/// <param name="ShouldLight">How many lamps should light.</param>
/// <param name="Reading">What a meter should read with the band that healthy parts can give, A; none where it tells nothing.</param>
public sealed record TestPoint(string When, string Do, int ShouldLight, Figure? Reading)
{
    /// <summary>The name by which the log refers to it.</summary>
    public string Key { get; init; } = Slug.Of(When);

    /// <summary>The id of the supply it is about; none where the house hangs on one alone, or where it is made with all its lamps.</summary>
    public string? Supply { get; init; }

    /// <summary>The names of the lamps that are looked at: all of the house, or those on <see cref="Supply"/>.</summary>
    public ItemList<string> Lamps { get; init; } = [];

    /// <summary>The gate of the work that it belongs to: A lamps on the bench, B lamps fitted, C before the house is closed, D fed through the board, E joined at the bank, F glued in; none for a test of the maker's own.</summary>
    public char? Gate { get; init; } = 'A';

    /// <summary>Whether light that shows anywhere but at the windows fails it too.</summary>
    public bool Leaks { get; init; }

    /// <summary>Whether it is one of the maker's own: lit lamps alone pass it.</summary>
    public bool IsOwn => Gate is null;

    /// <summary>Whether its lamps are only counted, as it does not say which of them must light.</summary>
    public bool IsCounted => Lamps.Count == 0;

    /// <summary>Whether it is made at the bank, on the supply that feeds the house; before that a test pack lights it.</summary>
    public bool IsAtTheBank => Gate is 'E' or 'F';

    /// <summary>Volts at the supply for which <see cref="Reading"/> holds, V.</summary>
    public Figure? At { get; init; }

    /// <summary>How much more a meter reads for each tenth of a volt more at the supply, A.</summary>
    public Figure? PerTenthVolt { get; init; }

    /// <summary>What it would read with one lamp out, the one whose loss shows least, with its band, A.</summary>
    public Figure? OneOut { get; init; }

    /// <summary>Whether eyes alone tell all well from one lamp out.</summary>
    public bool EyesTell { get; init; } = true;

    /// <summary>Whether the reading tells all well from one lamp out, a miss in a hundred at most.</summary>
    public bool MeterTells { get; init; }

    /// <summary>Lamps whose loss is not seen in this test.</summary>
    public ItemList<string> Unseen { get; init; } = [];

    /// <summary>A test that tells where eyes do not, in words; none where they do.</summary>
    public string? Instead { get; init; }

    /// <summary>How flickering lamps are tested: how long to watch, mean and extremes; none where nothing flickers.</summary>
    public string? Watch { get; init; }

    /// <summary>Whether some test, this or the one offered, tells all well from one lamp out.</summary>
    public bool CanTell => EyesTell || MeterTells || Instead is not null;
}
