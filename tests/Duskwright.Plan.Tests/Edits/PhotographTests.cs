using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Format;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Tests.Edits;

/// <summary>The photograph under the board. Expected lengths follow from similar triangles (Euclid, Elements, VI.4; from memory).</summary>
public sealed class PhotographTests
{
    private static readonly string Picture = new('c', 64);

    private static Town Bare => new() { Name = "Fenhithe" };

    private static Town OnBoard => Bare with { Board = new Board { Width = Length.FromMillimetres(600), Depth = Length.FromMillimetres(400), FeedHoles = [new FeedHole { Id = "h1", At = Point.At(100, 100) }] } };

    [Fact]
    public void Where_there_is_no_board_a_photograph_begins_one_of_its_proportions()
    {
        var board = LayPhotograph.Fitted(Bare, Picture, 4000, 3000).Apply(Bare).Board!;
        Assert.Equal(0.75, board.Depth.Millimetres / board.Width.Millimetres, 9);
        Assert.Equal((board.Width, board.Depth), (board.Photograph!.Width, board.Photograph.Depth));
    }

    [Fact]
    public void On_a_board_of_another_shape_the_whole_photograph_is_on_it()
    {
        var photograph = LayPhotograph.Fitted(OnBoard, Picture, 1000, 1000).Apply(OnBoard).Board!.Photograph!;
        Assert.Equal((400, 400), (photograph.Width.Millimetres, photograph.Depth.Millimetres));
    }

    [Fact]
    public void A_bare_board_takes_its_size_from_two_points_and_their_distance()
    {
        var laid = LayPhotograph.Fitted(Bare, Picture, 4000, 3000).Apply(Bare);

        // 3-4-5: the points lie 500 mm apart as laid and are 400 mm apart in truth.
        var board = new ScalePhotograph(Point.At(100, 100), Point.At(500, 400), Length.FromMillimetres(400)).Apply(laid).Board!;
        Assert.Equal(960, board.Width.Millimetres, 6);
        Assert.Equal(720, board.Depth.Millimetres, 6);
        Assert.Empty(TownChecks.Of(laid with { Board = board }));
    }

    [Fact]
    public void On_a_board_that_holds_something_only_the_photograph_is_scaled_and_its_first_point_stays()
    {
        var laid = LayPhotograph.Fitted(OnBoard, Picture, 600, 400).Apply(OnBoard);
        var board = new ScalePhotograph(Point.At(200, 100), Point.At(400, 100), Length.FromMillimetres(100)).Apply(laid).Board!;
        Assert.Equal(600, board.Width.Millimetres);
        Assert.Equal((300, 200), (board.Photograph!.Width.Millimetres, board.Photograph.Depth.Millimetres));
        Assert.Equal(Point.At(100, 50), board.Photograph.At);
    }

    [Fact]
    public void Points_that_are_one_and_distances_of_nothing_are_refused_in_a_sentence()
    {
        var laid = LayPhotograph.Fitted(OnBoard, Picture, 600, 400).Apply(OnBoard);
        var one = Point.At(10, 10);
        Assert.Equal("The two points are one.", Assert.Single(new ScalePhotograph(one, one, Length.FromMillimetres(5)).Problems(laid)).Message);
        Assert.Equal("distance", Assert.Single(new ScalePhotograph(one, Point.At(20, 10), default).Problems(laid)).Rule);
        Assert.Equal("no-photograph", Assert.Single(new ScalePhotograph(one, Point.At(20, 10), Length.FromMillimetres(5)).Problems(OnBoard)).Rule);
    }

    [Fact]
    public void The_same_picture_chosen_again_keeps_its_scale_and_another_does_not()
    {
        var scaled = new Photograph { Picture = Picture, At = Point.At(-20, 5), Width = Length.FromMillimetres(321), Depth = Length.FromMillimetres(123), Hidden = true };
        var town = new LayPhotograph(scaled, "").Apply(OnBoard);
        Assert.Equal(scaled with { Hidden = false }, LayPhotograph.Fitted(town, Picture, 10, 10).Photograph);
        Assert.NotEqual(scaled.Width, LayPhotograph.Fitted(town, new string('d', 64), 10, 10).Photograph!.Width);
    }

    [Fact]
    public void A_path_in_place_of_a_pictures_id_is_refused()
    {
        var photograph = new Photograph { Picture = "../secrets", At = Point.At(0, 0), Width = Length.FromMillimetres(100), Depth = Length.FromMillimetres(0) };
        Assert.Equal(["board.photograph.picture", "board.photograph.depth_mm"], TownChecks.Of(new LayPhotograph(photograph, "").Apply(OnBoard)).Select(p => p.Place));
    }

    [Fact]
    public void The_exchange_form_names_the_photograph_and_reads_it_back()
    {
        var town = LayPhotograph.Fitted(OnBoard, Picture, 600, 400).Apply(OnBoard);
        Assert.Equal(town, TownJson.Read(TownJson.Write(town)).Town);
    }

    [Fact]
    public void A_board_made_smaller_keeps_its_bank_on_it()
    {
        var large = new SizeBoard(Length.FromMillimetres(1200), Length.FromMillimetres(800)).Apply(Bare);
        Assert.Empty(TownChecks.Of(new SizeBoard(Length.FromMillimetres(500), Length.FromMillimetres(400)).Apply(large)));
    }
}
