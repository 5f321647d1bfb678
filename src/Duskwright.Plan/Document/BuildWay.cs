namespace Duskwright.Plan.Document;

/// <summary>How the maker builds a house, where it differs from the usual steps.</summary>
public sealed record BuildWay
{
    /// <summary>Usual steps done in another way, or left out.</summary>
    public ItemList<ChangedStep> Changed { get; init; } = [];

    /// <summary>Steps of the maker's own.</summary>
    public ItemList<OwnStep> Added { get; init; } = [];

    /// <summary>Keys of steps in the order in which they are wanted; what a step waits for still comes before it.</summary>
    public ItemList<string> Order { get; init; } = [];
}

/// <summary>A usual step as the maker does it. What is not said stays as usual.</summary>
public sealed record ChangedStep
{
    /// <summary>The step's key.</summary>
    public required string Step { get; init; }

    /// <summary>What is done, as an order.</summary>
    public string? Words { get; init; }

    /// <summary>Hands-on time, minutes.</summary>
    public int? Minutes { get; init; }

    /// <summary>Minutes until it is dry; what waits for it waits in proportion.</summary>
    public int? DryMinutes { get; init; }

    /// <summary>Whether the maker does without it; one that seals or is tested is never left out.</summary>
    public bool LeftOut { get; init; }
}

/// <summary>A step of the maker's own.</summary>
public sealed record OwnStep
{
    /// <summary>Its short name within the building, no other step's.</summary>
    public required string Key { get; init; }

    /// <summary>What is done, as an order.</summary>
    public required string Words { get; init; }

    /// <summary>Hands-on time, minutes.</summary>
    public required int Minutes { get; init; }

    /// <summary>Minutes until it is dry.</summary>
    public int DryMinutes { get; init; }

    /// <summary>The key of the step that it waits for; none for one that can be done at once.</summary>
    public string? After { get; init; }

    /// <summary>The key of a step that waits for it; none where none does.</summary>
    public string? Before { get; init; }

    /// <summary>Whether a lamp or joint is out of reach after it.</summary>
    public bool Seals { get; init; }

    /// <summary>What is tested when it is done; none where nothing is.</summary>
    public OwnTest? Test { get; init; }
}

/// <summary>A way of building that is kept for other houses.</summary>
public sealed record NamedWay
{
    /// <summary>What the maker calls it: "cottage with thatch".</summary>
    public required string Name { get; init; }

    /// <summary>The way.</summary>
    public required BuildWay Way { get; init; }
}
