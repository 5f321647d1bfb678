using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Lists;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Duskwright.Parts;

/// <summary>The houses as a table to type in; rows of a spreadsheet can be pasted into it.</summary>
public partial class HouseTable
{
    private const int MostLeds = 200;
    private bool _shown;
    private bool _mounted;
    private string _rows = "";
    private string? _said;
    private ItemList<string> _wrong = [];
    private (string House, string Column)? _refused;
    private ElementReference _table;
    private ElementReference _left;
    private DotNetObjectReference<HouseTable>? _self;

    /// <summary>Where the town is looked at from.</summary>
    [Parameter, EditorRequired]
    public Viewpoint View { get; set; } = default!;

    [Inject]
    private OpenTown Open { get; set; } = default!;

    /// <summary>Called by the script when rows have been pasted into a cell.</summary>
    /// <param name="text">The rows.</param>
    /// <returns>When they have been heard.</returns>
    [JSInvokable]
    public Task Pasted(string text) => InvokeAsync(async () =>
    {
        _rows = text;
        TakeIn();
        StateHasChanged();

        // What will not do is mended below the table, out of sight of the cell.
        if (_rows.Length > 0)
        {
            await _left.FocusAsync();
        }
    });

    public ValueTask DisposeAsync()
    {
        _self?.Dispose();
        GC.SuppressFinalize(this);
        return ValueTask.CompletedTask;
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (_shown && !_mounted)
        {
            _mounted = true;
            _self = DotNetObjectReference.Create(this);
            await using var script = await Js.InvokeAsync<IJSObjectReference>("import", "./rows.js");
            await script.InvokeVoidAsync("rows", _table, _self);
        }
    }

    private static string Value(ChangeEventArgs e) => e.Value?.ToString()?.Trim() ?? "";

    private static string ResistorWords(ResistorChoice? resistor) => resistor switch
    {
        null => "",
        { IsUnknown: true } => "don't know",
        { IsNone: true } => "none",
        _ => resistor.Value!.Value.Ohms.ToString("0.###", CultureInfo.InvariantCulture),
    };

    private string DistanceWords(Building house) => Open.Lengths.Words(house.Distance);

    private static string LedsWords(Building house) => house.Leds?.ToString(CultureInfo.InvariantCulture) ?? "";

    private void Hang(Building house, string group) => Say(house, h => h with { SwitchGroup = group.Length > 0 ? group : null }, group.Length > 0 ? $"hang it on switch {group}" : "on no switch");

    private void SayState(Building house, string state) => Say(house, h => h with { State = Enum.Parse<BuildingState>(state) }, state.ToLowerInvariant());

    // A cell that is read when it is left; what will not do stays as it is typed.
    private RenderFragment Cell(Building house, string column, string value, Action<string> read) => builder =>
    {
        builder.OpenElement(0, "input");
        builder.AddAttribute(1, "aria-label", $"{column} of {house.Name}");
        builder.AddAttribute(2, "value", value);
        builder.AddAttribute(3, "onchange", EventCallback.Factory.Create<ChangeEventArgs>(this, e =>
        {
            read(Value(e));
            _refused = _wrong.Count == 0 ? null : (house.Key, column);
        }));
        if (_wrong.Count > 0 && _refused == (house.Key, column))
        {
            builder.AddAttribute(4, "aria-invalid", "true");
            builder.AddAttribute(5, "aria-describedby", "list-refused");
        }

        builder.CloseElement();
    };

    private void Toggled() => _shown = true;

    private void TakeIn()
    {
        var read = PastedRows.Of(Open.Town, _rows, Open.Lengths);
        var problems = read.Edit is { } edit ? Open.Apply(edit, told: true) : [];
        if (problems.Count > 0)
        {
            _wrong = [$"{problems[0].Message} {problems[0].Remedy}"];
            return;
        }

        (_wrong, _rows) = (read.Sentences, read.Left);
        _said = read.Edit is { } taken
            ? $"{taken.Buildings.Count} {(taken.Buildings.Count == 1 ? "row is" : "rows are")} in the town{(read.Sentences.Count > 0 ? $"; {read.Sentences.Count} stay below to be mended" : "")}."
            : null;
    }

    private void Rename(Building house, string text)
    {
        if (text.Length == 0)
        {
            Wrong(house, "Name", text, "at least one letter");
        }
        else
        {
            Say(house, h => h with { Id = house.Key, Name = text }, $"call it {text}");
        }
    }

    private void Leds(Building house, string text)
    {
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var leds) && leds <= MostLeds)
        {
            Say(house, h => h with { Leds = leds }, $"{leds} LEDs");
        }
        else
        {
            Wrong(house, "LEDs", text, $"a whole number from 0 to {MostLeds}");
        }
    }

    private void Resistor(Building house, string text)
    {
        if (text.Length == 0)
        {
            Say(house, h => h with { Resistor = null }, "the usual resistor");
        }
        else if (ResistorText.Read(text) is { } resistor)
        {
            Say(house, h => h with { Resistor = resistor }, $"resistor {text}");
        }
        else
        {
            Wrong(house, "Resistor", text, "ohms like 270 or 4k7, none, or don't know");
        }
    }

    private void Distance(Building house, string text)
    {
        if (text.Length == 0)
        {
            Say(house, h => h with { Distance = null }, "distance not said");
        }
        else if (Open.Lengths.Read(text) is { } length)
        {
            Say(house, h => h with { Distance = length }, $"{text} from the bank");
        }
        else
        {
            Wrong(house, "Distance", text, Open.Lengths.Example);
        }
    }

    private void Say(Building house, Func<Building, Building> change, string words) =>
        (_said, _wrong) = (null, Open.Change(house.Key, change, $"{house.Name}: {words}").Select(p => $"{p.Message} {p.Remedy}").Take(1).ToItemList());

    private void Wrong(Building house, string column, string text, string allowed) =>
        (_said, _wrong) = (null, [$"{column} of {house.Name}: {(text.Length == 0 ? "nothing was typed" : $"“{text}” will not do")}; {allowed} is allowed."]);
}
