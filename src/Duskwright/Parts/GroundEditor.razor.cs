using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>What can be said of a hole, a wireway, the bank, a place to look from or a piece of scenery.</summary>
public partial class GroundEditor
{
    /// <summary>Its key on the board.</summary>
    [Parameter, EditorRequired]
    public string Key { get; set; } = "";

    [Parameter, EditorRequired]
    public BoardHand Hand { get; set; } = default!;

    /// <summary>Hears the key of what is now meant; none where it is gone.</summary>
    [Parameter]
    public EventCallback<string?> Chose { get; set; }

    private Board Board => Open.Town.Board!;

    private FeedHole? Hole => Board.FeedHoles.FirstOrDefault(h => Key == $"hole:{h.Id}");

    private ViewingPosition? Eye => Open.Town.Show.ViewingPositions.FirstOrDefault(v => Key == $"eye:{v.Name}");

    private bool IsFree => Board.Scenery.Where((s, i) => s.Kind == SceneryKind.Free && Key == $"thing:{i}").Any();

    private void Say(Bank bank) => Do(new DrawGround(Board with { Bank = bank }, "The bank and its pocket"));

    private void Say(FeedHole hole) => Do(new DrawGround(Board with { FeedHoles = Board.FeedHoles.Select(h => h.Id == hole.Id ? hole : h).ToItemList() }, $"Change hole {hole.Id}"));

    private void Say(ViewingPosition eye) => Do(new PlaceViews(Open.Town.Show.ViewingPositions.Select(v => v.Name == eye.Name ? eye : v).ToItemList(), $"Change {eye.Name}"));

    private async Task Remove()
    {
        if (Do(Hand.Remove(Key, [])))
        {
            await Chose.InvokeAsync(null);
        }
    }
}
