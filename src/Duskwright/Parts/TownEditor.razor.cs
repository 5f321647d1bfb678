using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Shapes;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>Houses added to the town, and the size of its board.</summary>
public partial class TownEditor
{
    private const int MostNamed = 12;
    private string _shape = StartingShape.All[0].Name;
    private string _name = "";
    private string _width = "";
    private string _depth = "";

    /// <summary>Hears the key of a building that has been added or put on the board.</summary>
    [Parameter]
    public EventCallback<string?> Chose { get; set; }

    private List<Building> Unplaced => [.. Open.Town.Buildings.Where(b => b.Place is null)];

    private async Task Add()
    {
        var shape = StartingShape.All.First(s => s.Name == _shape).Building;
        var edit = AddBuilding.Named(Open.Town, shape with { Name = _name.Trim() is { Length: > 0 } name ? name : shape.Name });
        edit = new AddBuilding(edit.Added with { Place = Open.Town.Board is null ? null : FreePlace.For(Open.Town, edit.Added) });
        if (Do(edit))
        {
            _name = "";
            await Chose.InvokeAsync(edit.Added.Key);
        }
    }

    private void Size()
    {
        if (Open.Lengths.ReadBoth(_width, _depth) is ({ Millimetres: > 0 } width, { Millimetres: > 0 } depth))
        {
            Do(new SizeBoard(width, depth));
        }
        else
        {
            Wrong = $"The board needs a width and a depth, each {Open.Lengths.Example}.";
        }
    }

    private async Task Put(Building building)
    {
        if (Do(new MoveBuilding(building.Key, FreePlace.For(Open.Town, building), $"{building.Name}: put on the board")))
        {
            await Chose.InvokeAsync(building.Key);
        }
    }
}
