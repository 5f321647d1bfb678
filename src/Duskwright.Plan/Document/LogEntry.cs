using System.Text.Json.Serialization;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>Something done, seen or read at the bench.</summary>
/// <remarks>An entry is never changed: one that was wrong is followed by one that <see cref="Corrects"/> it.</remarks>
public sealed record LogEntry
{
    /// <summary>Its own mark, by which a later entry can correct it; none in entries nobody corrects.</summary>
    public string? Id { get; init; }

    /// <summary>The day.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>The time of day, where it is known.</summary>
    public TimeOnly? Time { get; init; }

    /// <summary>What it was.</summary>
    public required LogKind Kind { get; init; }

    /// <summary>The building it concerns; none means the town or a supply.</summary>
    public string? Building { get; init; }

    /// <summary>The supply it concerns.</summary>
    public string? Supply { get; init; }

    /// <summary>The build step that was done, by its key.</summary>
    public string? Step { get; init; }

    /// <summary>The test that was made, by its key.</summary>
    public string? Test { get; init; }

    /// <summary>Whether the test was passed; none where it was not a test.</summary>
    public bool? Passed { get; init; }

    /// <summary>What each lamp was seen to do; a lamp not named was not looked at.</summary>
    public ItemList<LampSeen> Looks { get; init; } = [];

    /// <summary>The current read.</summary>
    public Current? Current { get; init; }

    /// <summary>The voltage read.</summary>
    public Voltage? Voltage { get; init; }

    /// <summary>The resistance read, power off.</summary>
    public Resistance? Resistance { get; init; }

    /// <summary>What the diode range of the meter showed.</summary>
    public Voltage? DiodeVoltage { get; init; }

    /// <summary>Whether the resistance range showed no number: more than it can show, as an open joint or an LED gives it.</summary>
    public bool ResistanceOver { get; init; }

    /// <summary>Whether the diode range showed no number.</summary>
    public bool DiodeOver { get; init; }

    /// <summary>Whether the readings with power off were taken with the meter's leads changed over, its red one on minus.</summary>
    public bool Reversed { get; init; }

    /// <summary>How many lamps were seen lit.</summary>
    public int? Lit { get; init; }

    /// <summary>How long the lamps burnt.</summary>
    public Duration? Burnt { get; init; }

    /// <summary>Why a step was done although its tests had not been passed.</summary>
    public string? Despite { get; init; }

    /// <summary>The <see cref="Id"/> of the earlier entry in whose place this one stands.</summary>
    public string? Corrects { get; init; }

    /// <summary>The photograph that goes with it: the id of a picture in the working file, 64 hexadecimal digits.</summary>
    public string? Photograph { get; init; }

    /// <summary>What the maker wrote.</summary>
    public string? Note { get; init; }

    /// <summary>The moment; midday of its day where no time is known.</summary>
    [JsonIgnore]
    public DateTime At => Date.ToDateTime(Time ?? new TimeOnly(12, 0));
}
