using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Lists;
using Duskwright.Plan.Parts;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>What is said of the town as a whole: its name, its show, what is usual where a house says nothing else, and its levels of ground.</summary>
public partial class TownBasics
{
    private Town Town => Open.Town;

    private Show Show => Town.Show;

    private WiringChoices Wiring => Town.Wiring;

    private IEnumerable<WirePart> Wires => Catalogue.Parts.Wires.Concat(Town.OwnParts.Wires);

    private string ResistorWords => Wiring.Resistor switch
    {
        null => "",
        { IsUnknown: true } => "don't know",
        { IsNone: true } => "none",
        var said => said.Value!.Value.Ohms.ToString("0.###", CultureInfo.InvariantCulture),
    };

    private static string? Text(ChangeEventArgs e) => e.Value?.ToString()?.Trim() is { Length: > 0 } text ? text : null;

    private Town With(Show show) => Town with { Show = show };

    private void Take(Town after, string words) =>
        Do(after.Wiring == Wiring ? new DescribeTown(after.Name, after.ScaleRatio, after.Show, words) : new ChangeWiring(after.Wiring, words));

    private void Rename(ChangeEventArgs e)
    {
        if (Text(e) is { } name)
        {
            Take(Town with { Name = name }, $"Call the town {name}");
        }
        else
        {
            Wrong = "The town needs a name: at least one letter.";
        }
    }

    private void Usual(WiringChoices wiring) => Do(new ChangeWiring(wiring, "What is usual in this town"));

    private void SayResistor(ChangeEventArgs e)
    {
        var typed = Text(e);
        if (typed is not null && ResistorText.Read(typed) is null)
        {
            Wrong = $"Resistor at each LED: “{typed}” will not do; ohms like 270 or 4k7, none, or don't know are allowed.";
        }
        else
        {
            Usual(Wiring with { Resistor = typed is null ? null : ResistorText.Read(typed) });
        }
    }

    private void Say(Board board, Level level) => Do(new DrawGround(board with { Levels = board.Levels.Select(l => l.Id == level.Id ? level : l).ToItemList() }, $"Change level {level.Id}"));

    private void Remove(Board board, Level level) => Do(new DrawGround(board with { Levels = board.Levels.Where(l => l.Id != level.Id).ToItemList() }, $"One level less: {level.Id}"));

    // Read when the field is left, so that what is half typed is no edit.
    private RenderFragment Number(string label, double? value, Func<double?, Town> say, bool mayBeEmpty = false) => builder =>
    {
        builder.OpenElement(0, "label");
        builder.AddContent(1, label);
        builder.OpenElement(2, "input");
        builder.AddAttribute(3, "value", value?.ToString("0.###", CultureInfo.InvariantCulture));
        builder.AddAttribute(4, "inputmode", "decimal");
        builder.AddAttribute(5, "placeholder", mayBeEmpty ? "not said" : null);
        builder.AddAttribute(6, "onchange", EventCallback.Factory.Create<ChangeEventArgs>(this, e => Read(label, Text(e), say, mayBeEmpty)));
        builder.CloseElement();
        builder.CloseElement();
    };

    private void Read(string label, string? typed, Func<double?, Town> say, bool mayBeEmpty)
    {
        // The label ends in the unit; a scale may be typed as it is said, 1:87.
        var unit = label.LastIndexOf(", ", StringComparison.Ordinal) is > 0 and var comma && !label.EndsWith(" 1 to", StringComparison.Ordinal) ? label[(comma + 2)..] : null;
        var number = typed is null ? null : NumberText.Read(typed.StartsWith("1:", StringComparison.Ordinal) ? typed[2..] : typed, unit);
        if (typed is null ? mayBeEmpty : number is not null)
        {
            Take(say(number), $"{label}: {typed ?? "not said"}");
        }
        else
        {
            Wrong = $"{label}: {(typed is null ? "nothing was typed" : $"“{typed}” will not do")}; a number is allowed.";
        }
    }
}
