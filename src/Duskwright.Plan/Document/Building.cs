using System.Text.Json.Serialization;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>A house, street lamp, sign or boat that carries lamps.</summary>
/// <remarks>A name is enough; a number of LEDs and a rough distance to the bank make it worth computing.</remarks>
public sealed record Building
{
    // Asked for many thousand times in a large town, and made of the name alone.
    private MadeOfName _slug;

    /// <summary>What the maker calls it.</summary>
    public required string Name
    {
        get;
        init => (field, _slug) = (value, default);
    }

    /// <summary>How other parts of the document refer to it; the name in small letters where nothing is said.</summary>
    public string? Id { get; init; }

    /// <summary>What it is.</summary>
    public BuildingKind Kind { get; init; }

    /// <summary>How far it is built.</summary>
    public BuildingState State { get; init; }

    /// <summary>A short code for labels, two or three letters; made from the name where nothing is said.</summary>
    public string? Code { get; init; }

    /// <summary>Number of LEDs, where the rooms are not described one by one.</summary>
    public int? Leds { get; init; }

    /// <summary>The part used for its lamps unless a lamp says otherwise: a part's id or <see cref="PartId.Unknown"/>.</summary>
    public string? Led { get; init; }

    /// <summary>The resistor in each lamp's lead unless a lamp says otherwise.</summary>
    public ResistorChoice? Resistor { get; init; }

    /// <summary>Rough distance from the bank as the crow flies; none means "don't know" where the building is not placed.</summary>
    public Length? Distance { get; init; }

    /// <summary>Length of the pair from the house to the bank where it has been measured or laid.</summary>
    public Length? PairLength { get; init; }

    /// <summary>The wire of the pair: a part's id or <see cref="PartId.Unknown"/>; the town's usual wire where nothing is said.</summary>
    public string? Wire { get; init; }

    /// <summary>Length of each lamp's own leads.</summary>
    public Length? TailLength { get; init; }

    /// <summary>The switch group that lights it.</summary>
    public string? SwitchGroup { get; init; }

    /// <summary>Where it stands; none means it is not placed yet.</summary>
    public Placement? Place { get; init; }

    /// <summary>The pack it is to stay on, whatever a suggested sharing would do: a supply's id.</summary>
    public string? Pack { get; init; }

    /// <summary>The hole its pair goes through.</summary>
    public string? FeedHole { get; init; }

    /// <summary>The tile it stands on, in a town of tiles that plug into one another: any word, the same for all that stand on it.</summary>
    public string? Tile { get; init; }

    /// <summary>The wireway its pair is to go along, whatever the shortest way is.</summary>
    public string? Wireway { get; init; }

    /// <summary>The finish inside: what the light meets before the pane.</summary>
    public InteriorFinish? Finish { get; init; }

    /// <summary>Its roof.</summary>
    public Roof? Roof { get; init; }

    /// <summary>Its storeys, ground floor first; none means only the number of LEDs is known.</summary>
    public ItemList<Storey> Storeys { get; init; } = [];

    /// <summary>How the maker builds it, where that differs from the usual steps.</summary>
    public BuildWay? Way { get; init; }

    /// <summary>A line or two of the maker's own.</summary>
    public string? Note { get; init; }

    /// <summary>The name by which the rest of the document refers to the building.</summary>
    [JsonIgnore]
    public string Key => Id ?? (_slug.Text ??= Slug.Of(Name));

    /// <summary>Every lamp that is described room by room, with the room it stands in.</summary>
    /// <returns>Ground floor first, in the order written.</returns>
    public IEnumerable<(Storey Storey, Room Room, Lamp Lamp)> DescribedLamps() =>
        from storey in Storeys
        from room in storey.Rooms
        from lamp in room.Lamps
        select (storey, room, lamp);

    // Made of the name, so it takes no part in whether two buildings are equal.
    private struct MadeOfName : IEquatable<MadeOfName>
    {
        internal string? Text;

        public readonly bool Equals(MadeOfName other) => true;

        public override readonly bool Equals(object? obj) => obj is MadeOfName;

        public override readonly int GetHashCode() => 0;
    }
}
