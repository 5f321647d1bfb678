using Duskwright.Plan;

namespace Duskwright.Book.Drawings;

/// <summary>Every ink and hand of the drawings.</summary>
public static class Inks
{
    // The dash of each circuit, mm, so that wires are told apart without colour.
    private static readonly double[][] CircuitDashes = [[0.4, 0.6], [], [2, 1.1], [0.6, 0.8], [2.4, 0.9, 0.5, 0.9], [1.4, 0.9], [3.2, 0.7, 0.4, 0.5, 0.4, 0.7], [4, 1]];

    /// <summary>Outlines of things that are built.</summary>
    public static Ink Outline { get; } = new("outline", Tone.None, Tone.Ink, 0.5);

    /// <summary>Visible edges.</summary>
    public static Ink Edge { get; } = new("edge", Tone.None, Tone.Ink, 0.35);

    /// <summary>Thin lines.</summary>
    public static Ink Thin { get; } = new("thin", Tone.None, Tone.Ink, 0.25);

    /// <summary>Detail and hatching.</summary>
    public static Ink Fine { get; } = new("fine", Tone.None, Tone.Soft, 0.18);

    /// <summary>Hidden edges (ISO 128: dashed).</summary>
    public static Ink Hidden { get; } = new("hidden", Tone.None, Tone.Ink, 0.25) { Dash = [1.8, 1] };

    /// <summary>Folds and outlines of assemblies (ISO 128: long dash, dot).</summary>
    public static Ink Fold { get; } = new("fold", Tone.None, Tone.Ink, 0.35) { Dash = [3.6, 0.9, 0.5, 0.9] };

    /// <summary>Dots, terminals, cell plates.</summary>
    public static Ink Solid { get; } = new("solid", Tone.Ink);

    /// <summary>White card with an outline.</summary>
    public static Ink Card { get; } = new("card", Tone.Sheet, Tone.Ink, 0.35);

    /// <summary>White card with a heavy outline.</summary>
    public static Ink Wall { get; } = new("wall", Tone.Board, Tone.Ink, 0.5);

    /// <summary>A pane.</summary>
    public static Ink Pane { get; } = new("pane", Tone.Lit, Tone.Ink, 0.25);

    /// <summary>An area that takes the pointer and shows nothing.</summary>
    public static Ink Touch { get; } = new("touch");

    /// <summary>The ring about what is chosen.</summary>
    public static Ink Ring { get; } = new("ring", Tone.None, Tone.LampInk, 0.55);

    /// <summary>Cast shadow.</summary>
    public static Ink Shade { get; } = new("shade", Tone.Shade);

    /// <summary>The side of the board.</summary>
    public static Ink Side { get; } = new("side", Tone.Rule, Tone.Ink, 0.25);

    /// <summary>The lower ground.</summary>
    public static Ink Quay { get; } = new("quay", Tone.Quay);

    /// <summary>The upper ground.</summary>
    public static Ink Level { get; } = new("level", Tone.Board);

    /// <summary>The slope below an edge.</summary>
    public static Ink Scarp { get; } = new("scarp", Tone.None, Tone.Soft, 2.2, 0.6) { Dash = [0.25, 1] };

    /// <summary>Water.</summary>
    public static Ink Water { get; } = new("water", Tone.Water);

    /// <summary>A ripple.</summary>
    public static Ink Ripple { get; } = new("ripple", Tone.None, Tone.Deep);

    /// <summary>Water between ripples.</summary>
    public static Ink Calm { get; } = new("calm", Tone.None, Tone.Water);

    /// <summary>A path on the ground, as wide as it is.</summary>
    public static Ink Path { get; } = new("path", Tone.None, Tone.Rule, 0, 0.5);

    /// <summary>Edges of a jetty, as wide as it is.</summary>
    public static Ink Jetty { get; } = new("jetty", Tone.None, Tone.Ink);

    /// <summary>Planks between the edges.</summary>
    public static Ink Planks { get; } = new("planks", Tone.None, Tone.Tile);

    /// <summary>Gaps between planks.</summary>
    public static Ink Gaps { get; } = new("gaps", Tone.None, Tone.Ink, 0, 0.7) { Dash = [0.2, 1.6] };

    /// <summary>Trees.</summary>
    public static Ink Tree { get; } = new("tree", Tone.Leaf, Tone.Soft, 0.25);

    /// <summary>Slate.</summary>
    public static Ink Slate { get; } = new("slate", Tone.Slate, Tone.Ink, 0.4);

    /// <summary>Thatch.</summary>
    public static Ink Thatch { get; } = new("thatch", Tone.Thatch, Tone.Ink, 0.4);

    /// <summary>Tiles, hulls.</summary>
    public static Ink Tile { get; } = new("tile", Tone.Tile, Tone.Ink, 0.4);

    /// <summary>Charge left in a cell.</summary>
    public static Ink Charge { get; } = new("charge", Tone.Lamp);

    /// <summary>Charge left in a cell whose lamps look dim.</summary>
    public static Ink LowCharge { get; } = new("low-charge", Tone.Spoil);

    /// <summary>A fuse that is missing.</summary>
    public static Ink Missing { get; } = new("missing", Tone.None, Tone.Spoil, 0.35) { Dash = [0.8, 0.8] };

    /// <summary>A limit on a plot.</summary>
    public static Ink Limit { get; } = new("limit", Tone.None, Tone.Soft, 0.25) { Dash = [0.5, 1] };

    /// <summary>A curve on a plot.</summary>
    public static Ink Curve { get; } = new("curve", Tone.None, Tone.Ink, 0.6);

    /// <summary>The hour on a plot.</summary>
    public static Ink Now { get; } = new("now", Tone.None, Tone.LampInk, 0.25);

    /// <summary>Light on a plot.</summary>
    public static Ink Glow { get; } = new("glow", Tone.Lamp, Tone.Ink, 0.25);

    /// <summary>What comes after the light on a plot.</summary>
    public static Ink After { get; } = new("after", Tone.None, Tone.Soft, 0.25) { Dash = [1, 0.8] };

    /// <summary>Where a difference is not seen.</summary>
    public static Ink Unseen { get; } = new("unseen", Tone.Sound, Tone.None, 0, 0.14);

    /// <summary>One of many.</summary>
    public static Ink Dot { get; } = new("dot", Tone.Ink, Tone.None, 0, 0.6);

    /// <summary>One that stands out.</summary>
    public static Ink Odd { get; } = new("odd", Tone.None, Tone.Warn, 0.5);

    /// <summary>Hatching of what is sealed or stays dark.</summary>
    public static Ink Hatch { get; } = new("hatch", Tone.None, Tone.Soft, 0.18);

    /// <summary>A conductor of a wiring diagram.</summary>
    public static Ink Conductor { get; } = new("conductor", Tone.None, Tone.Ink, 0.5);

    /// <summary>A lead as it lies on the bench.</summary>
    public static Ink Lead { get; } = new("lead", Tone.None, Tone.Ink, 0.9);

    /// <summary>A gap broken out of a line.</summary>
    public static Ink Gap { get; } = new("gap", Tone.Sheet);

    /// <summary>Names in a drawing.</summary>
    public static Hand Name { get; } = new("name", FaceName.Murmurs, 3.3, Tone.Ink, Tone.Board);

    /// <summary>A town's name on its board.</summary>
    public static Hand Title { get; } = new("title", FaceName.Speaks, 11);

    /// <summary>A line under a title.</summary>
    public static Hand Subtitle { get; } = new("subtitle", FaceName.Murmurs, 3.8, Tone.Soft);

    /// <summary>Small headings in a drawing.</summary>
    public static Hand Heading { get; } = new("heading", FaceName.Speaks, 3.8);

    /// <summary>A letter that is read from where one stands, as under a switch.</summary>
    public static Hand Letter { get; } = new("letter", FaceName.Speaks, 6);

    /// <summary>Notes and units.</summary>
    public static Hand Note { get; } = new("note", FaceName.Reports, 2.9, Tone.Soft);

    /// <summary>Small notes.</summary>
    public static Hand Small { get; } = new("small", FaceName.Reports, 2.2, Tone.Soft, Tone.Board);

    /// <summary>The smallest notes.</summary>
    public static Hand Tiny { get; } = new("tiny", FaceName.Reports, 2.1);

    /// <summary>Names of rooms and sealed places.</summary>
    public static Hand RoomName { get; } = new("room-name", FaceName.Murmurs, 2.6, Tone.Ink, Tone.Board);

    /// <summary>Names of lamps beside their marks.</summary>
    public static Hand LampName { get; } = new("lamp-name", FaceName.Strong, 2.6, Tone.Ink, Tone.Board);

    /// <summary>Numbers of joints.</summary>
    public static Hand JointNumber { get; } = new("joint-number", FaceName.Strong, 2.4);

    /// <summary>What is said about the hour.</summary>
    public static Hand Said { get; } = new("said-now", FaceName.Strong, 3, Tone.Ink, Tone.Ground);

    /// <summary>Words on lamplight.</summary>
    public static Hand OnGlow { get; } = new("on-glow", FaceName.Strong, 3, Tone.OnLamp);

    /// <summary>Values.</summary>
    public static Hand Value { get; } = new("value", FaceName.Reports, 2.9);

    /// <summary>Names of parts: L1, R1, F3.</summary>
    public static Hand Ref { get; } = new("ref", FaceName.Strong, 2.9);

    /// <summary>Numbers in a ring or badge.</summary>
    public static Hand Number { get; } = new("number", FaceName.Strong, 2.7, Tone.Ink, Tone.None);

    /// <summary>A remark in the maker's words.</summary>
    public static Hand Remark { get; } = new("remark", FaceName.Murmurs, 3, Tone.Ink, Tone.Sheet);

    /// <summary>Every ink.</summary>
    public static ItemList<Ink> All { get; } =
    [
        Outline, Edge, Thin, Fine, Hidden, Fold, Solid, Card, Wall, Pane, Touch, Ring, Shade, Side, Quay, Level, Scarp, Water, Ripple, Calm, Path, Jetty, Planks, Gaps, Tree, Slate, Thatch, Tile,
        Charge, LowCharge, Missing, Limit, Curve, Now, Glow, After, Unseen, Dot, Odd, Hatch, Conductor, Lead, Gap,
        .. Enumerable.Range(0, 8).SelectMany(c => new[] { Wire(c), Suggested(c), Badge(c) }),
    ];

    /// <summary>Every hand.</summary>
    public static ItemList<Hand> Hands { get; } = [Name, Title, Subtitle, Heading, Letter, Note, Small, Tiny, RoomName, LampName, JointNumber, Said, OnGlow, Value, Ref, Number, Remark];

    /// <summary>Wire of a circuit.</summary>
    /// <param name="circuit">Its number; 0 for none. After seven the colours and dashes begin again, the numbers do not.</param>
    /// <returns>The ink.</returns>
    public static Ink Wire(int circuit) => new($"wire{Colour(circuit)}", Tone.None, ToneOf(circuit), 0.5) { Dash = [.. CircuitDashes[Colour(circuit)]] };

    /// <summary>Wire that is only suggested.</summary>
    /// <param name="circuit">Its circuit.</param>
    /// <returns>The ink.</returns>
    public static Ink Suggested(int circuit) => new($"suggested{Colour(circuit)}", Tone.None, ToneOf(circuit), 0.35, 0.75) { Dash = [.. CircuitDashes[Colour(circuit)]] };

    /// <summary>The disc behind a circuit's number.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <returns>The ink.</returns>
    public static Ink Badge(int circuit) => new($"badge{Colour(circuit)}", Tone.Sheet, ToneOf(circuit), 0.7);

    private static int Colour(int circuit) => circuit <= 0 ? 0 : ((circuit - 1) % 7) + 1;

    private static Tone ToneOf(int circuit) => Tone.Circuit0 + Colour(circuit);
}
