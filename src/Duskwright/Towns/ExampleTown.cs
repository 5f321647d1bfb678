using Duskwright.Book.Drawings;
using Duskwright.Book.Houses;
using Duskwright.Book.Plans;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Format;
using Duskwright.Study;

namespace Duskwright.Towns;

/// <summary>A town that comes with the program: its file, what it shows, and its picture at dusk. Read and drawn once, when first asked for.</summary>
public sealed class ExampleTown
{
    private readonly Lazy<Town> _town;
    private readonly Lazy<Drawing> _picture;

    private ExampleTown(string file, string shows, bool front = false)
    {
        (File, Shows) = (file, shows);
        _town = new(() => TownJson.Read(System.IO.File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "examples", file))) is var read && read.Town is { } town
            ? town
            : throw new InvalidDataException($"{file}: {string.Join(' ', read.Problems.Select(p => p.Message))}"));
        _picture = new(() => Draw(TownStudy.Of(_town.Value), front));
    }

    /// <summary>The towns, in the order in which they are offered.</summary>
    public static ItemList<ExampleTown> All { get; } =
    [
        new("saltmarrow.json", "A harbour of 42 houses, lamps and boats on five packs; one fades too soon, one has no fuse."),
        new("wheel-and-kettle.json", "A tavern to play in: storeys and roof lift off and find their contacts again either way round.", front: true),
        new("fennimarsh.json", "Six tiles for the games table, each on a plug; take one out and the rest stays lit."),
        new("quillet-house.json", "Twelve rooms behind a front that opens, with old filament bulbs on two adaptors.", front: true),
        new("tallowgate.json", "A quarter in three scenes; light-guide strands carry one lamp to nine lanterns."),
        new("ottersluice.json", "A quay whose water was poured over its wires: what lies beneath was proved first."),
        new("old-pellmere.json", "An inherited town, half of it glued and nobody knows with what: ranges, a missing fuse, and what one reading would settle."),
    ];

    /// <summary>The name of its file among the examples.</summary>
    public string File { get; }

    /// <summary>What it shows, in a line.</summary>
    public string Shows { get; }

    /// <summary>The town.</summary>
    public Town Town => _town.Value;

    /// <summary>Its board at dusk when the show begins, or the front of its first house.</summary>
    public Drawing Picture => _picture.Value;

    /// <summary>Whether the picture is there without a wait.</summary>
    public bool IsDrawn => _picture.IsValueCreated;

    private static Drawing Draw(TownStudy study, bool front) => front
        ? HouseElevation.Of(study.Buildings[0], WallSide.Front, study.Buildings[0].Building.Place!.Width!.Value.Millimetres / 100, 1)
        : BoardPlan.Of(study, study.At(0), new BoardView { Dusk = true });
}
