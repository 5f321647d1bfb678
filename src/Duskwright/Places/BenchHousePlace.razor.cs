using System.Globalization;
using Duskwright.Book.Tiles;
using Duskwright.Plan.Document;
using Duskwright.Study.Bench;
using Duskwright.Study.Results;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Places;

/// <summary>One house in the hand: its next step with what it needs, its test, its seal. A plain page, so that it stays while the connection is away.</summary>
public partial class BenchHousePlace
{
    [Parameter]
    public string Key { get; set; } = "";

    /// <summary>Whether the maker says that what was to dry is dry.</summary>
    [SupplyParameterFromQuery(Name = "dry")]
    private bool IsDry { get; set; }

    [Inject]
    private OpenTown Open { get; set; } = default!;

    [Inject]
    private TimeProvider Time { get; set; } = default!;

    private BuildingResult? House { get; set; }

    private HouseWork? Work { get; set; }

    private DateTime Clock { get; set; }

    private StepWork? Now { get; set; }

    private string Where => Work is { Steps: var steps } && Now is { } now ? $"step {steps.ToList().IndexOf(now) + 1} of {steps.Count}" : "all done";

    // Neighbours that stand over its way are lifted out for it and set back.
    private string? OnTheBoard => Now?.Step.Key switch
    {
        BuildSteps.Drill when DrillSize.Of(Open.Study, House!) is { } drill =>
            string.Create(CultureInfo.InvariantCulture, $"Drill {drill:0.#} mm{(House!.Building.FeedHole is { } hole ? $", hole {hole}" : "")}: the pairs slide through; with a joint to pass, its width and 1 mm more."),
        BuildSteps.Feed when Open.Study.Laying.Around(Key) is { Count: > 0 } rows => $"{string.Join(". ", rows.Select(r => r.Do))}.",
        _ => null,
    };

    private string MendAddress => House?.Supply is { } supply ? $"/bench?at=pack:{Uri.EscapeDataString(supply)}" : "/bench";

    private List<(LogEntry Entry, string Words)> Entries => [.. Open.Town.StandingLog().Where(l => l.Building == Key).Reverse().Select(l => (l, Told(l)))];

    protected override void OnParametersSet()
    {
        Clock = Time.GetLocalNow().DateTime;
        House = Open.Study.Buildings.FirstOrDefault(b => b.Building.Key == Key);
        Work = Open.Study.Work(Key);
        Now = Work?.NextAt(Clock);
    }

    private static string Capital(string words) => $"{char.ToUpperInvariant(words[0])}{words[1..]}";

    private static string Span(int minutes) => minutes < 120 ? $"{minutes} min" : minutes < 2880 ? $"{minutes / 60} h" : $"{minutes / 1440} days";

    private string ReadyWords(DateTime ready) => ready.ToString(ready.Date == Clock.Date ? "HH:mm" : "dddd HH:mm", CultureInfo.InvariantCulture);

    private static string When(LogEntry entry) => entry.Date.ToString("d MMM", CultureInfo.InvariantCulture) + (entry.Time is { } time ? time.ToString(" HH:mm", CultureInfo.InvariantCulture) : "");

    private string Told(LogEntry entry)
    {
        var what = entry switch
        {
            { Kind: LogKind.Test, Test: { } test } => $"{House!.Tests.FirstOrDefault(t => t.Key == test)?.When ?? test}: {LogText.Reading(entry)}",
            { Step: { } step, Kind: LogKind.Note } => $"{Work!.Steps.FirstOrDefault(s => s.Step.Key == step)?.Step.Words ?? step}: {entry.Note ?? "photograph"}",
            { Step: { } step } => $"{Work!.Steps.FirstOrDefault(s => s.Step.Key == step)?.Step.Words ?? step}, done",
            _ => entry.Note ?? entry.Kind.ToString(),
        };
        return entry.Kind == LogKind.Test
            ? $"{When(entry)}: {what}"
            : $"{When(entry)}: {what}{(entry.Despite is { } despite ? $" although untested, because: {despite}" : "")}{(entry.Note is { } note && entry.Kind != LogKind.Note ? $" ({note})" : "")}";
    }
}
