namespace Duskwright.Plan.Document;

/// <summary>A miniature town as its maker describes it: the whole document.</summary>
/// <remarks>
/// Almost everything is optional; what is not said is estimated by Study and the estimate is reported. A value, never
/// changed in place: an edit gives a new town.
/// </remarks>
public sealed record Town
{
    /// <summary>The town's name.</summary>
    public required string Name { get; init; }

    /// <summary>A line or two of the maker's own about the town.</summary>
    public string? Note { get; init; }

    /// <summary>The scale as the second number of its ratio: 160 for 1:160.</summary>
    public double? ScaleRatio { get; init; }

    /// <summary>The board the town stands on, where the maker has drawn one.</summary>
    public Board? Board { get; init; }

    /// <summary>The houses, street lamps, signs and boats that carry lamps.</summary>
    public ItemList<Building> Buildings { get; init; } = [];

    /// <summary>What feeds the lamps: packs of cells, adaptors, power banks.</summary>
    public ItemList<Supply> Supplies { get; init; } = [];

    /// <summary>The switches at the bank, each with the supply it takes from.</summary>
    public ItemList<SwitchGroup> SwitchGroups { get; init; } = [];

    /// <summary>Which switches are on together, by name.</summary>
    public ItemList<Scene> Scenes { get; init; } = [];

    /// <summary>The maker's usual parts and rules of wiring, used wherever a building says nothing else.</summary>
    public WiringChoices Wiring { get; init; } = new();

    /// <summary>The routes the maker has accepted for the pairs.</summary>
    public ItemList<Route> Routes { get; init; } = [];

    /// <summary>The joints under the board at which shared pairs branch, each with the pair that leads to it.</summary>
    public ItemList<Tap> Taps { get; init; } = [];

    /// <summary>The reels of wire on hand; leads are cut from these before new ones are bought.</summary>
    public ItemList<Reel> Reels { get; init; } = [];

    /// <summary>When, how long and in what light the town is shown.</summary>
    public Show Show { get; init; } = new();

    /// <summary>Parts the maker has measured or described, beside the built-in catalogue.</summary>
    public Parts.PartList OwnParts { get; init; } = new();

    /// <summary>When the maker works at the bench, and the calendar accepted for it.</summary>
    public BenchCalendar? Calendar { get; init; }

    /// <summary>Ways of building that the maker keeps for other houses.</summary>
    public ItemList<NamedWay> Ways { get; init; } = [];

    /// <summary>What breaks oftener or more seldom than usual in this maker's work.</summary>
    public ItemList<Breakage> Breakages { get; init; } = [];

    /// <summary>What was done and read at the bench, oldest first.</summary>
    public ItemList<LogEntry> Log { get; init; } = [];

    /// <summary>The log without what was corrected or withdrawn.</summary>
    /// <returns>The entries that count, oldest first as they were written.</returns>
    public IEnumerable<LogEntry> StandingLog()
    {
        var gone = Log.Where(l => l.Corrects is not null).Select(l => l.Corrects!).ToHashSet(StringComparer.Ordinal);
        return Log.Where(l => l.Kind != LogKind.Withdrawn && (l.Id is null || !gone.Contains(l.Id)));
    }
}
