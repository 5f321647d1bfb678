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

    private void Say(string what, double? number, Show show) => Say(what, number, Town with { Show = show });

    private void Say(string what, double? number, Town after) => Describe(after, $"{what}: {number?.ToString("0.###", CultureInfo.InvariantCulture) ?? "not said"}");

    private void Describe(Town after, string words) => Do(new DescribeTown(after.Name, after.ScaleRatio, after.Show, words));

    private void Rename(ChangeEventArgs e)
    {
        if (Text(e) is { } name)
        {
            Describe(Town with { Name = name }, $"Call the town {name}");
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
}
