using Duskwright.Plan;

namespace Duskwright.Study.Bench;

/// <summary>One step of building a house and its lamps.</summary>
/// <param name="Key">Its short name within the building.</param>
/// <param name="Words">What is done, as an order: "glaze the windows".</param>
/// <param name="Minutes">Hands-on time of a practised hand, whole minutes.</param>
/// <param name="After">The steps it waits for, and how long they must have dried.</param>
/// <param name="DryMinutes">Minutes until what was done in it is dry.</param>
/// <param name="Seals">Whether a lamp or joint is out of reach after it: test before.</param>
/// <param name="Materials">What it takes besides tools.</param>
/// <param name="Caution">What to mind; none where nothing can hurt.</param>
/// <param name="Source">Where minutes and drying come from.</param>
public sealed record BenchStep(
    string Key, string Words, int Minutes, ItemList<StepWait> After, int DryMinutes, bool Seals, ItemList<string> Materials, string? Caution, string Source)
{
    /// <summary>Whether a test is one of those that must have been passed before it is done: a house on several supplies has one for each.</summary>
    /// <param name="test">The key of a test of the house.</param>
    /// <returns>Whether it is.</returns>
    public bool WaitsForTest(string test) => Tests.Any(t => StageTests.Is(test, t));

    /// <summary>The keys of the tests that must have been passed before it is done.</summary>
    public ItemList<string> Tests { get; init; } = [];

    /// <summary>The key of the maker's own test made with it, whether it must be passed or not; none where there is none.</summary>
    public string? OwnTest { get; init; }

    /// <summary>How many of its minutes go into setting out and mixing, needed once for all houses of an evening; 0 where it has nothing to share. Typical, from memory.</summary>
    public int SetUpMinutes { get; init; }

    /// <summary>Minutes for which the house takes a place to dry afterwards, until it may be handled; 0 where nothing dries, or where it dries on the board.</summary>
    public int ShelfMinutes { get; init; }

    /// <summary>Whether it is a step of the maker's own.</summary>
    public bool IsOwn { get; init; }

    /// <summary>Whether a maker may do without it: it neither seals nor is tested.</summary>
    public bool MayBeLeftOut => !Seals && Tests.Count == 0;
}

/// <summary>A step that must be done, and dry, before.</summary>
/// <param name="Step">Its key.</param>
/// <param name="DryMinutes">Minutes in clock time between its end and what waits for it.</param>
public sealed record StepWait(string Step, int DryMinutes);
