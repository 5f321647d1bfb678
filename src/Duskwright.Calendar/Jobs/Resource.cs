namespace Duskwright.Calendar.Jobs;

/// <summary>Something of which there is only so much: pairs of hands, places to dry.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Capacity">How much of it there is at any time; 1 or more.</param>
public sealed record Resource(string Id, int Capacity)
{
    /// <summary>What the maker calls it in sentences; the id where nothing is said.</summary>
    public string Words { get; init; } = Id;
}
