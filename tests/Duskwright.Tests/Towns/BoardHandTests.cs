using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Towns;

namespace Duskwright.Tests.Towns;

/// <summary>The board drawn by hand: what a drag, a frame and a row of points make of it.</summary>
public sealed class BoardHandTests
{
    private static readonly Town Town = new()
    {
        Name = "Fenhithe",
        Board = new Board { Width = Length.FromMillimetres(600), Depth = Length.FromMillimetres(400), Bank = new Bank { At = Point.At(500, 20) }, Scenery = [new Scenery { Kind = SceneryKind.Obstacle, Points = [Point.At(10, 10), Point.At(50, 10), Point.At(50, 30)] }] },
        Buildings =
        [
            new Building { Name = "Eel house", Leds = 2, Place = new Placement { At = Point.At(100, 100) } },
            new Building { Name = "Reed barn", Leds = 1, Place = new Placement { At = Point.At(300, 103) } },
            new Building { Name = "Mill", Leds = 1, State = BuildingState.Fixed, Place = new Placement { At = Point.At(200, 103) } },
        ],
    };

    private static readonly string[] All = ["eel-house", "reed-barn", "mill"];

    [Fact]
    public void Houses_chosen_together_move_as_one_keep_their_distance_and_leave_what_is_fixed()
    {
        var after = new BoardHand(Town, 1).Move("reed-barn", All, 400, 20, 0)!.Apply(Town).Buildings.Select(b => b.Place!.At).ToList();
        Assert.Equal([Point.At(400, 120), Point.At(600, 123), Point.At(200, 103)], after);
    }

    [Fact]
    public void A_position_snaps_along_the_way_it_was_moved_and_not_across()
    {
        var after = new BoardHand(Town, 25).Move("reed-barn", [], 8, 0, 0)!.Apply(Town).Buildings[1].Place!.At;
        Assert.Equal(Point.At(300, 103), after);
        Assert.Equal(Point.At(325, 103), new BoardHand(Town, 25).Move("reed-barn", [], 14, 0, 0)!.Apply(Town).Buildings[1].Place!.At);
    }

    [Fact]
    public void A_corner_bends_an_outline_and_the_whole_keeps_its_shape()
    {
        var hand = new BoardHand(Town, 1);
        Assert.Equal(Point.At(60, 35), hand.Move("corner:2:thing:0", [], 10, 5, 0)!.Apply(Town).Board!.Scenery[0].Points[2]);
        Assert.Equal([Point.At(0, 0), Point.At(40, 0), Point.At(40, 20)], hand.Move("thing:0", [], -900, -900, 0)!.Apply(Town).Board!.Scenery[0].Points);
        Assert.Equal(4, hand.OneCornerMore("thing:0")!.Apply(Town).Board!.Scenery[0].Points.Count);
    }

    [Theory]
    [InlineData("hole:none")]
    [InlineData("corner:x:thing:0")]
    [InlineData("thing:7")]
    [InlineData("pack:1")]
    public void What_is_not_there_is_not_moved_or_changes_nothing(string key)
    {
        var edit = new BoardHand(Town, 1).Move(key, [], 10, 10, 0);
        Assert.True(edit is null || edit.Apply(Town).Equals(Town));
    }

    [Fact]
    public void Every_kind_that_is_drawn_point_by_point_becomes_a_sound_edit_once_it_has_its_points()
    {
        Point[] points = [Point.At(100, 200), Point.At(180, 200), Point.At(150, 260)];
        foreach (var kind in Enum.GetValues<DraftKind>().Where(k => k is not (DraftKind.Measure or DraftKind.Scale)))
        {
            var draft = new BoardDraft(kind, []);
            Assert.Null(draft.Edit(Town));
            draft = points.Take(draft.Least).Aggregate(draft, (d, p) => d with { Points = d.Points.Add(p) });
            var after = draft.Edit(Town)!.Apply(Town);
            Assert.NotEqual(Town, after);
            Assert.Empty(TownChecks.Of(after));
        }
    }

    // Pythagoras: sides of 30 and 40 mm.
    [Fact]
    public void A_measure_tells_the_way_along_its_points_and_changes_nothing()
    {
        var measure = new BoardDraft(DraftKind.Measure, [Point.At(0, 0), Point.At(30, 40)]);
        Assert.Contains("50 mm along", measure.Words(LengthRule.All[0]), StringComparison.Ordinal);
        Assert.Contains("1.969 in along", measure.Words(LengthRule.All[2]), StringComparison.Ordinal);
        Assert.Null(measure.Edit(Town));
    }

    [Fact]
    public void Pointing_at_the_first_corner_again_closes_an_outline_and_a_corner_near_it_does_not()
    {
        var draft = new[] { Point.At(100, 200), Point.At(180, 200), Point.At(180, 260) }.Aggregate(new BoardDraft(DraftKind.House, []), (d, p) => d.With(p));
        Assert.True(draft.IsClosedBy(Point.At(102, 199), Town.Board!));
        Assert.False(draft.IsClosedBy(Point.At(110, 200), Town.Board!));
        Assert.False(draft.WithoutLast().IsClosedBy(Point.At(100, 200), Town.Board!));
        Assert.False((draft with { Kind = DraftKind.Wireway }).IsClosedBy(Point.At(100, 200), Town.Board!));
    }

    [Fact]
    public void A_point_put_twice_counts_once_and_the_last_one_can_be_taken_back()
    {
        var draft = new BoardDraft(DraftKind.House, []).With(Point.At(10, 10)).With(Point.At(40, 10)).With(Point.At(40, 10));
        Assert.Equal([Point.At(10, 10), Point.At(40, 10)], draft.Points);
        Assert.Equal([Point.At(10, 10)], draft.WithoutLast().Points);
        Assert.Contains("the last side 20 mm", draft.With(Point.At(40, 30)).Words(LengthRule.All[0]), StringComparison.Ordinal);
    }
}
