using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Study.Sums;

namespace Duskwright.Study.Questions;

/// <summary>A question that makers ask, what must be known to answer it, and its answer.</summary>
/// <param name="Verb">Its short name: in the address and on the command line.</param>
/// <param name="Theme">Under which heading it stands.</param>
/// <param name="Words">The question in a maker's words.</param>
/// <param name="Asks">What must be known.</param>
/// <param name="Computed">The computation, from what was said of every ask.</param>
public sealed record Question(string Verb, Theme Theme, string Words, ItemList<Asked> Asks, Func<Given, SumAnswer> Computed)
{
    /// <summary>Where in the open town the same is told of the town itself: "bench"; none where no town can tell.</summary>
    public string? InTown { get; init; }

    /// <summary>Puts what the maker said into the open town; none where nothing of it belongs there.</summary>
    public Func<Given, Town, TownEdit>? Put { get; init; }

    /// <summary>Answers it.</summary>
    /// <param name="said">What was said; the rest is what a beginner usually has. Meant for what is not <see cref="Refused"/>.</param>
    /// <returns>The answer.</returns>
    public SumAnswer Answer(Given said)
    {
        var given = Filled(said);
        var answer = Computed(given);
        return Asks.Any(a => a.Option == UsualFields.Ohms.Option) && Asks.Contains(UsualFields.Cell) && Asks.Contains(UsualFields.OfLamp) && UsualFields.TooMuch(given) is { } warning
            ? answer with { Warnings = answer.Warnings.Prepend(warning).ToItemList() }
            : answer;
    }

    /// <summary>Other words by which makers look for it.</summary>
    public string Also { get; init; } = "";

    /// <summary>What of it is not computed beyond its supply; none where its fields' limits say all.</summary>
    public Func<Given, Problem?>? Refuse { get; init; }

    /// <summary>Why it is not answered: more volts than may be touched.</summary>
    /// <param name="said">What was said.</param>
    /// <returns>The problem; none where it may be asked.</returns>
    public Problem? Refused(Given said)
    {
        var given = Filled(said);
        return Refuse is { } refuse
            ? refuse(given)
            : Asks.Contains(UsualFields.Cell) && TownChecks.Of(new Town { Name = "", Supplies = [UsualFields.SupplyOf(given)] }) is [var problem, ..] ? problem : null;
    }

    /// <summary>The edit that puts what was said into a town.</summary>
    /// <param name="said">What was said.</param>
    /// <param name="town">The town.</param>
    /// <returns>The edit; none where nothing of it belongs in a town.</returns>
    public TownEdit? Into(Given said, Town town) => Put?.Invoke(Filled(said), town);

    private Given Filled(Given said) => Asks.Aggregate(said, (given, asked) => asked switch
    {
        AskedNumber number => given.With(number, given[number]),
        AskedChoice choice => given.With(choice, given[choice]),
        _ => given,
    });
}

/// <summary>Under which heading a question stands.</summary>
public enum Theme
{
    /// <summary>Lamps and their resistors.</summary>
    Lamps,

    /// <summary>Cells, packs and adaptors.</summary>
    Packs,

    /// <summary>Wire, switches and holes.</summary>
    Wires,

    /// <summary>Building a house and what it looks like.</summary>
    Houses,

    /// <summary>Hours and money.</summary>
    Work,

    /// <summary>Something is dark, hot or dim.</summary>
    Faults,

    /// <summary>Pictures of the town.</summary>
    Pictures,
}
