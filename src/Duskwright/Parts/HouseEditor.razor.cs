using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Lists;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Plan.Shapes;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>What can be said of one building, field by field; each change is an edit of its own.</summary>
public partial class HouseEditor
{
    private const int MostLeds = 200;
    private const int MostInTerrace = 30;
    private string? _wrong;
    private string? _refused;

    [Parameter, EditorRequired]
    public Building House { get; set; } = default!;

    /// <summary>Hears the key of the building that is now meant; none where it is gone.</summary>
    [Parameter]
    public EventCallback<string?> Chose { get; set; }

    [Inject]
    private OpenTown Open { get; set; } = default!;

    private IEnumerable<LampPart> Lamps => Catalogue.Parts.Lamps.Concat(Open.Town.OwnParts.Lamps);

    private IEnumerable<WirePart> Wires => Catalogue.Parts.Wires.Concat(Open.Town.OwnParts.Wires);

    private static string Value(ChangeEventArgs e) => e.Value?.ToString() ?? "";

    private static string? Chosen(ChangeEventArgs e) => Value(e) is { Length: > 0 } id ? id : null;

    private static string Named(ChangeEventArgs e) => Value(e) is { Length: > 0 } id ? id : "as usual";

    private string Measured(Length? length) => Open.Lengths.Words(length);

    private static string Said(ResistorChoice? resistor) => resistor switch
    {
        null => "",
        { IsUnknown: true } => "don't know",
        { IsNone: true } => "none",
        _ => resistor.Value!.Value.Ohms.ToString("0.###", CultureInfo.InvariantCulture),
    };

    // A field that is read when it is left; what will not do stays as it is typed.
    private RenderFragment Text(string label, string value, Action<string> read) => builder =>
    {
        builder.OpenElement(0, "label");
        builder.AddContent(1, label);
        builder.OpenElement(2, "input");
        builder.AddAttribute(3, "value", value);
        builder.AddAttribute(4, "onchange", EventCallback.Factory.Create<ChangeEventArgs>(this, e =>
        {
            read(Value(e).Trim());
            _refused = _wrong is null ? null : label;
        }));
        if (_wrong is not null && _refused == label)
        {
            builder.AddAttribute(5, "aria-invalid", "true");
            builder.AddAttribute(6, "aria-describedby", "house-refused");
        }

        builder.CloseElement();
        builder.CloseElement();
    };

    private void Say(Func<Building, Building> change, string words) => _wrong = Told(Open.Change(House.Key, change, $"{House.Name}: {words}"));

    private void StayOn(string? pack) => Say(h => h with { Pack = pack }, pack is null ? "any pack will do" : $"stays on pack {pack}");

    private void Through(string? hole) => Lead(hole, House.Wireway, hole is null ? "straight down" : $"through hole {hole}");

    private void Along(string? wireway) => Lead(House.FeedHole, wireway, wireway is null ? "the shortest way" : $"along wireway {wireway}");

    private void Lead(string? hole, string? wireway, string words) => _wrong = Told(Open.Apply(new LeadPair(House.Key, hole, wireway, $"{House.Name}: {words}"), told: true));

    private void Rename(string name)
    {
        if (name.Length == 0)
        {
            Wrong("Name", name, "at least one letter");
            return;
        }

        // The key stays what the rest of the document calls it.
        Say(h => h with { Id = House.Key, Name = name }, $"call it {name}");
    }

    private void SayLeds(string text)
    {
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var leds) && leds <= MostLeds)
        {
            Say(h => h with { Leds = leds }, $"{leds} LEDs");
        }
        else
        {
            Wrong("LEDs", text, $"a whole number from 0 to {MostLeds}");
        }
    }

    private void SayResistor(string text)
    {
        if (text.Length == 0)
        {
            Say(h => h with { Resistor = null }, "the usual resistor");
        }
        else if (ResistorText.Read(text) is { } resistor)
        {
            Say(h => h with { Resistor = resistor }, $"resistor {text}");
        }
        else
        {
            Wrong("Resistor", text, "ohms like 270 or 4k7, none, or don't know");
        }
    }

    private void SayTurn(Placement place, string text)
    {
        if (NumberText.Read(text, "°") is { } degrees && Math.Abs(degrees) <= 360)
        {
            Move(p => p with { Rotation = Angle.FromDegrees(degrees) }, "turn");
        }
        else
        {
            Wrong("Turned", text, "degrees from -360 to 360");
        }
    }

    private void SayGround(Placement place, string ground)
    {
        if (ground == "own")
        {
            Move(OwnOutline.Of, "give it corners of its own");
            return;
        }

        Move(p => p with { Round = ground == "round", Outline = [] }, ground == "round" ? "make it round" : "make it a rectangle");
    }

    private void OneCornerMore() => Move(OwnOutline.OneMore, "one corner more");

    private void SayTerrace(string text)
    {
        if (House.Place is not { Width: not null, Round: false, Outline.Count: 0 })
        {
            _wrong = "A terrace needs a rectangular house of a known width; say its width first.";
        }
        else if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var houses) && houses is >= 2 and <= MostInTerrace)
        {
            _wrong = Told(Open.Apply(new AddTerrace(House, houses), told: true));
        }
        else
        {
            Wrong("A terrace of", text, $"a whole number from 2 to {MostInTerrace}");
        }
    }

    private void Wrong(string field, string text, string allowed) =>
        _wrong = $"{field}: {(text.Length == 0 ? "nothing was typed" : $"“{text}” will not do")}; {allowed} is allowed.";

    private void Length(string text, string field, Func<Building, Length?, Building> changed)
    {
        if (text.Length == 0)
        {
            Say(h => changed(h, null), $"{field} not said");
        }
        else if (Open.Lengths.Read(text) is { } length)
        {
            Say(h => changed(h, length), $"{field} {Measured(length)}");
        }
        else
        {
            Wrong(field, text, Open.Lengths.Example);
        }
    }

    private void Placed(string text, string field, Func<Placement, Length, Placement> changed)
    {
        if (Open.Lengths.Read(text) is { } length)
        {
            Move(p => changed(p, length), $"{field} {Measured(length)}");
        }
        else
        {
            Wrong(field, text, Open.Lengths.Example);
        }
    }

    private void Move(Func<Placement, Placement?> change, string words) => _wrong = Told(Open.Apply(
        new MoveBuilding(
            House.Key,
            Open.Town.Buildings.FirstOrDefault(b => b.Key == House.Key)?.Place is { } place ? change(place) : null,
            $"{House.Name}: {words}"),
        told: true));

    private void Put() => _wrong = Told(Open.Apply(new MoveBuilding(House.Key, FreePlace.For(Open.Town, House), $"{House.Name}: put on the board")));

    private async Task Copy()
    {
        var edit = AddBuilding.Named(Open.Town, House with { State = BuildingState.Idea, Code = null, FeedHole = null, PairLength = null, Note = null });
        if (Open.Town.Board is not null)
        {
            edit = new AddBuilding(edit.Added with { Place = FreePlace.For(Open.Town, edit.Added) });
        }

        _wrong = Told(Open.Apply(edit, told: true));
        await Chose.InvokeAsync(_wrong is null ? edit.Added.Key : House.Key);
    }

    private async Task Remove()
    {
        _wrong = Told(Open.Apply(new RemoveBuildings([House]), told: true));
        if (_wrong is null)
        {
            await Chose.InvokeAsync(null);
        }
    }

    private static string? Told(ItemList<Duskwright.Plan.Checks.Problem> problems) => problems.Count == 0 ? null : $"{problems[0].Message} {problems[0].Remedy}";
}
