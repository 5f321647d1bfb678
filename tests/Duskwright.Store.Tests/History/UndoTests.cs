using Duskwright.Plan.Document;
using Duskwright.Plan.Tests;

namespace Duskwright.Store.Tests.History;

public sealed class UndoTests : IDisposable
{
    private readonly Shelf _shelf = new();

    public void Dispose() => _shelf.Dispose();

    [Fact]
    public void All_undone_is_the_first_town_and_all_redone_is_the_last_also_after_a_restart() =>
        RandomTowns.Sound.Array[2, 6].Sample(
            towns =>
            {
                using var shelf = new Shelf();
                using (var file = shelf.Begun(towns[0]))
                {
                    foreach (var town in towns[1..])
                    {
                        Assert.Empty(file.Change(town, town.Name));
                    }
                }

                using (var file = shelf.Opened())
                {
                    foreach (var town in towns[..^1].Reverse())
                    {
                        Assert.Empty(file.Undo());
                        Assert.Equal(town, file.Town);
                    }

                    Assert.Null(file.Head.Parent);
                }

                using (var file = shelf.Opened())
                {
                    Assert.Equal(towns[0], file.Town);
                    foreach (var town in towns[1..])
                    {
                        Assert.Empty(file.Redo());
                        Assert.Equal(town, file.Town);
                    }

                    Assert.Null(file.Next);
                }
            },
            iter: 12);

    [Fact]
    public void Edits_undo_and_redo_in_any_order_follow_a_list_of_towns_kept_by_hand() =>
        Gen.Int[0, 9].Array[1, 40].Sample(
            strokes =>
            {
                using var shelf = new Shelf();
                using var file = shelf.Begun(Shelf.Saltmarrow);
                List<Town> byHand = [Shelf.Saltmarrow];
                var at = 0;
                foreach (var (stroke, turn) in strokes.Select((s, turn) => (s, turn)))
                {
                    if (stroke < 3)
                    {
                        Assert.Empty(file.Undo());
                        at = Math.Max(0, at - 1);
                    }
                    else if (stroke < 5)
                    {
                        Assert.Empty(file.Redo());
                        at = Math.Min(byHand.Count - 1, at + 1);
                    }
                    else
                    {
                        byHand.RemoveRange(at + 1, byHand.Count - at - 1);
                        byHand.Add(Shelf.WithLeds(file.Town, turn + 1));
                        at++;
                        Assert.Empty(file.Change(byHand[at], "Count anew"));
                    }

                    Assert.Equal(byHand[at], file.Town);
                    Assert.Equal((at > 0, at < byHand.Count - 1), (file.Head.Parent is not null, file.Next is not null));
                }
            },
            iter: 6);

    [Fact]
    public void A_hundred_edits_are_all_taken_back()
    {
        _shelf.Fill(100);
        using var file = _shelf.Opened();
        for (var edit = 100; edit > 0; edit--)
        {
            Assert.Equal($"Edit {edit}", file.Head.Label);
            Assert.Empty(file.Undo());
        }

        Assert.Equal(Shelf.Saltmarrow, file.Town);
        Assert.Empty(file.Undo());
        Assert.Equal(Shelf.Saltmarrow, file.Town);
    }

    [Fact]
    public void An_edit_of_one_house_keeps_that_house_and_nothing_else()
    {
        using var file = _shelf.Begun(Shelf.Saltmarrow);
        file.Change(Shelf.WithLeds(file.Town, 7), "Seven");
        var difference = Assert.Single(file.Compare(1, 2).Differences, d => d.Field == "leds");
        Assert.Equal("7", difference.Is);
        Assert.Single(file.Compare(1, 2).Differences.Select(d => d.Thing).Distinct());
    }

    [Fact]
    public void What_was_undone_before_another_edit_can_still_be_looked_at()
    {
        using var file = _shelf.Begun(Shelf.Saltmarrow);
        file.Change(Shelf.WithLeds(file.Town, 7), "Seven");
        Assert.Empty(file.NamePoint("seven"));
        file.Undo();
        file.Change(Shelf.WithLeds(file.Town, 8), "Eight");
        Assert.Null(file.Next);
        Assert.Equal(7, file.TownAt(Assert.Single(file.Points).Revision).Town!.Buildings[0].Leds);
        var seen = Assert.Single(file.Compare(2, 3).Differences, d => d.Field == "leds");
        Assert.Equal(("7", "8"), (seen.Was, seen.Is));
        Assert.Equal(["Eight", "Seven", "Begin"], file.Revisions(10).Select(r => r.Label));
    }

    [Fact]
    public void A_new_house_and_a_gone_one_are_told_as_a_whole()
    {
        using var file = _shelf.Begun(new Town { Name = "Tarn", Buildings = [new Building { Name = "Mill" }, new Building { Name = "Inn" }] });
        file.Change(file.Town with { Buildings = [new Building { Name = "Mill" }, new Building { Name = "Forge" }] }, "Forge for inn");
        var told = file.Compare(1, 2).Differences.Where(d => d.Field.Length == 0 && !d.Thing.EndsWith('/')).ToList();
        Assert.Equal([("buildings/Forge", false, true), ("buildings/Inn", true, false)], told.Select(d => (d.Thing, d.Was is not null, d.Is is not null)));
    }

    [Fact]
    public void A_point_needs_a_name_and_a_name_given_again_moves()
    {
        using var file = _shelf.Begun(Shelf.Saltmarrow);
        Assert.Equal("no-name", Assert.Single(file.NamePoint("  ")).Rule);
        file.NamePoint("before the show");
        file.Change(Shelf.WithLeds(file.Town, 7), "Seven");
        file.NamePoint("before the show");
        Assert.Equal(2, Assert.Single(file.Points).Revision);
        Assert.Throws<ArgumentOutOfRangeException>(() => file.TownAt(99));
    }
}
