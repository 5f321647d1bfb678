using Duskwright.Plan;
using Duskwright.Plan.Parts;
using Duskwright.Study;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;

namespace Duskwright.Book.Lists;

/// <summary>Every list of a town, described once for the screen, the book, CSV and XLSX.</summary>
public static class TownLists
{
    /// <summary>The lists of a town.</summary>
    /// <param name="study">The town's results.</param>
    /// <returns>The lists in the order a maker needs them; scenes only where the town has some.</returns>
    public static ItemList<TownList> Of(TownStudy study) =>
    [
        Labels(study),
        LeadLists.Cuts(study),
        .. study.ReelCuts.Count > 0 ? [LeadLists.Reels(study)] : Array.Empty<TownList>(),
        .. study.Joints.Count > 0 ? [LeadLists.Joints(study)] : Array.Empty<TownList>(),
        .. study.Ends.Count > 0 ? [LeadLists.Ends(study)] : Array.Empty<TownList>(),
        .. study.Laying.Rows.Count > 0 ? [Laying(study)] : Array.Empty<TownList>(),
        Packs(study),
        Switches(study),
        .. study.Scenes.Count > 0 ? [Scenes(study)] : Array.Empty<TownList>(),
        Loads(study),
        .. study.Panes.Count > 0 ? [Windows(study), Leaks(study), Exposure(study)] : Array.Empty<TownList>(),
        Spread(study),
        Fuses(study),
        Tests(study),
        .. study.LampLives.Count > 0 ? [Lives(study)] : Array.Empty<TownList>(),
        Parts(study),
        Faults(study),
    ];

    private static TownList Labels(TownStudy study) => new(
        "label",
        "Label list",
        ["Label", "Place on the strip", "House", "Carries"],
        Rows(study.Labels, l => [ListCell.Of(l.Code), ListCell.Of(l.Terminal), ListCell.Of(l.Name), ListCell.Of(l.Detail)]));

    internal static TownList Laying(TownStudy study) => new(
        "laying",
        "Laying order",
        ["Step", "Do", "Now, because"],
        Rows(study.Laying.Rows, r => [ListCell.Of(r.Number), ListCell.Of(r.Do), ListCell.Of(r.Because)]));

    // With all switches on and fresh cells, or cells as full as they are said to be.
    internal static TownList Packs(TownStudy study) => new(
        "pack",
        "Pack list",
        ["Pack", "Name", "Cells", "Switches", "LEDs", "Takes", "Sound between", "Volts under load", "Half light after", "Sure between", "A third after"],
        Rows(study.Packs.Where(p => p.Lamps > 0), p =>
        [
            ListCell.Of(p.Number), ListCell.Of(p.Supply.Name), ListCell.Of(p.Words), ListCell.Of(string.Join(", ", p.SwitchGroups)), ListCell.Of(p.Lamps), ListCell.Of(p.Load), ListCell.Band(p.Load),
            ListCell.Of(p.Volts), Hours(p.HoursToDim, p), ListCell.Band(p.HoursToDim), Hours(p.HoursToSpoiled, p),
        ]));

    private static ListCell Hours(Figure? hours, PackResult pack) => hours is null ? ListCell.Of(pack.Fade is null ? "" : "never") : ListCell.Of(hours);

    internal static TownList Switches(TownStudy study) => new(
        "switch",
        "Switch list",
        ["Switch", "Name", "Pack", "LEDs", "Takes alone", "Sound between", "Lights", "On in"],
        Rows(study.SwitchList, s =>
        [
            ListCell.Of(s.Id), ListCell.Of(s.Name), ListCell.Of(s.Supply), ListCell.Of(s.Lamps), ListCell.Of(s.Current), ListCell.Band(s.Current),
            ListCell.Of(string.Join(", ", s.Buildings)), ListCell.Of(string.Join(", ", s.Scenes)),
        ]));

    private static TownList Scenes(TownStudy study) => new(
        "scene",
        "Scene list",
        ["Scene", "Pack", "Switches on", "LEDs", "Takes", "Sound between", "Half light after", "A third after", "Worst lamp", "Its lightness at the end"],
        Rows(study.Scenes.SelectMany(s => s.Packs.Select(p => (s.Scene.Name, Pack: p))), s =>
        [
            ListCell.Of(s.Name), ListCell.Of(s.Pack.Supply), ListCell.Of(string.Join(", ", s.Pack.SwitchGroups)), ListCell.Of(s.Pack.Lamps), ListCell.Of(s.Pack.Load), ListCell.Band(s.Pack.Load),
            s.Pack.HoursToDim is null ? ListCell.Of("never") : ListCell.Of(s.Pack.HoursToDim), s.Pack.HoursToSpoiled is null ? ListCell.Of("never") : ListCell.Of(s.Pack.HoursToSpoiled),
            ListCell.Of(s.Pack.Worst is { } worst ? $"{worst.Lamp} of {worst.Building}" : "none fades"), ListCell.Of(s.Pack.Worst?.Lightness),
        ]));

    internal static TownList Loads(TownStudy study) => new(
        "load",
        "Load list",
        ["Label", "House", "LEDs", "Kinds", "Switch", "Pack", "Takes", "Sound between"],
        Rows(study.LoadList, l => [ListCell.Of(l.Code), ListCell.Of(l.Building), ListCell.Of(l.Lamps), ListCell.Of(l.Kinds), ListCell.Of(l.SwitchGroup), ListCell.Of(l.Supply), ListCell.Of(l.Current), ListCell.Band(l.Current)]));

    private static TownList Windows(TownStudy study) => new(
        "window",
        "Window list",
        ["House", "Room", "Window", "Brightness", "Reads as lit up to", "Brightest part over mean", "Colour, K", "Purer than a screen shows", "If black inside", "If white inside", "Black leaves", "Seen from", "Shows"],
        Rows(study.Buildings.SelectMany(b => study.Finishes(b.Building.Key)).Zip(study.Sights), w =>
        [
            ListCell.Of(House(study, w.First.Pane.Building).Building.Name), ListCell.Of(Room(study, w.First.Pane.Building, w.First.Pane.Storey, w.First.Pane.Room)), ListCell.Of(w.First.Pane.Window + 1),
            ListCell.Of(w.First.Pane.Luminance), ListCell.Of(w.First.Pane.ReadsAsLitTo), ListCell.Of(w.First.Pane.HotSpotRatio),
            w.First.Pane.ColourKelvin is { } kelvin ? ListCell.Of(10 * Math.Round(kelvin / 10)) : ListCell.Of(""),
            ListCell.Of(w.First.Pane.ColourOutsideScreen ? "yes, mixed with white" : ""), ListCell.Of(w.First.Black), ListCell.Of(w.First.White), ListCell.Of(w.First.Left),
            ListCell.Of(string.Join("; ", w.Second.From)), ListCell.Of(Shows(w.Second)),
        ]));

    private static TownList Exposure(TownStudy study) => new(
        "exposure",
        "Exposure list",
        ["ISO", "f-number", "For the windows", "For the facades", "For both in one picture", "Bands under a hall light on 50 Hz, at most", "Bands under one on 60 Hz, at most"],
        Rows(study.Camera?.Shots ?? [], s =>
        [
            ListCell.Of(s.Iso), ListCell.Of(s.FNumber), ListCell.Of(s.Windows), ListCell.Of(s.Facade), ListCell.Of(s.Pair),
            ListCell.Of(FigureText.Of(s.Bands50, "share")), ListCell.Of(FigureText.Of(s.Bands60, "share")),
        ]));

    private static TownList Lives(TownStudy study) => new(
        "life",
        "Lamp life list",
        ["Lamp", "How many", "Hours", "Between", "Years at the show's hours", "Years between", "Light left after ten years", "Left between"],
        Rows(study.LampLives, l =>
        [
            ListCell.Of(l.Lamp), ListCell.Of(l.Lamps), ListCell.Of(l.Hours), ListCell.Band(l.Hours), ListCell.Of(l.Years), ListCell.Band(l.Years), ListCell.Of(l.LeftAfterTenYears), ListCell.Band(l.LeftAfterTenYears),
        ]));

    private static TownList Leaks(TownStudy study) => new(
        "leak",
        "Blacking list",
        ["House", "Room", "Through", "Made of", "Light on it inside", "Coats of black until nothing shows", "Widest seam that does not show"],
        Rows(study.Leaks.SelectMany(r => r.Leaks.Select(l => (Room: r, Leak: l))), l =>
        [
            ListCell.Of(House(study, l.Room.Building).Building.Name), ListCell.Of(Room(study, l.Room.Building, l.Room.Storey, l.Room.Room)), ListCell.Of(l.Leak.What), ListCell.Of(l.Leak.Covering),
            ListCell.Of(l.Leak.InsideLux), ListCell.Of(l.Leak.Coats.Value), l.Room.WidestSeam.Value < 1e-5 ? ListCell.Of("none: close them all") : ListCell.Of(l.Room.WidestSeam),
        ]));

    private static BuildingResult House(TownStudy study, string key) => study.Buildings.First(b => b.Building.Key == key);

    private static string? Room(TownStudy study, string building, int storey, int room) =>
        House(study, building).Building.Storeys[storey] is var floor && floor.Rooms[room].Name is { } name ? name : floor.Name;

    private static string Shows(PaneSight sight) => string.Join("; ", sight.Lamps
        .Select(l => l.Glare is { } glare ? $"{l.Lamp} bare, {FigureText.Of(glare)} times as bright as the pane" : $"back and wires of {l.Lamp}")
        .Concat(sight.SeenThrough ? ["the room"] : Array.Empty<string>()));

    // Nine in ten of all circuits drawn lie within the ranges.
    internal static TownList Spread(TownStudy study) => new(
        "spread",
        "As parts are sold",
        ["Pack", "Takes nine times in ten", "Lasts nine times in ten", "Kind", "LEDs", "Next ones differ visibly", "One is visibly darker", "Greediest over the mean", "Takes too much"],
        Rows(study.Packs.SelectMany(p => study.Spread(p.Supply.Id) is { } s ? s.Kinds.Select(k => (Pack: p, Spread: s, Kind: k)) : []), s =>
        [
            ListCell.Of(s.Pack.Number), ListCell.Band(s.Spread.Load), ListCell.Band(s.Spread.Hours), ListCell.Of(s.Kind.Lamp), ListCell.Of(s.Kind.Lamps),
            ListCell.Of(s.Kind.PairDiffers), ListCell.Of(s.Kind.AnyDiffers), ListCell.Of(s.Kind.Greediest), ListCell.Of(s.Kind.Overloaded),
        ]));

    internal static TownList Fuses(TownStudy study) => new(
        "fuse",
        "Shorts and fuses",
        ["Pack", "Fuse", "Opens on every dead short", "Worst that lasts", "Wire in card", "At the short itself", "Better", "Wire then", "Short then"],
        Rows(study.Packs.Where(p => p.ShortCircuit is not null), p =>
        [
            ListCell.Of(p.Number), ListCell.Of(p.Supply.Fuse is { } id ? Catalogue.FindFuse(study.Town, id)!.Name : "none"), ListCell.Of(p.ShortCircuit!.FuseOpens ? "yes" : "no"),
            ListCell.Of(p.ShortCircuit.Current), ListCell.Of(p.ShortCircuit.WireTemperature), ListCell.Of(p.ShortCircuit.HotSpot),
            .. p.ShortCircuit.Advice is { } advice && advice.Fuse.Id != p.Supply.Fuse
                ? new[] { ListCell.Of(advice.Fuse.Name), ListCell.Of(advice.WireTemperature), ListCell.Of(advice.HotSpot) }
                : [ListCell.Of(p.ShortCircuit.Advice is null ? "none carries the lamps and is sure to open" : "it is the best"), ListCell.Of(""), ListCell.Of("")],
        ]));

    private static TownList Tests(TownStudy study) => new(
        "test",
        "Test list",
        ["Label", "House", "When", "Do", "Should light", "Meter reads", "Sound between"],
        Rows(study.Buildings.SelectMany(b => b.Tests.Select(t => (House: b, Test: t))), t =>
        [
            ListCell.Of(t.House.Code), ListCell.Of(t.House.Building.Name), ListCell.Of(t.Test.When), ListCell.Of(t.Test.Do), ListCell.Of(t.Test.ShouldLight), ListCell.Of(t.Test.Reading), ListCell.Band(t.Test.Reading),
        ]));

    // All switches of the pack on.
    private static TownList Faults(TownStudy study) => new(
        "fault",
        "Fault list",
        ["Pack", "You see", "It may be", "The pack then takes", "What to do"],
        Rows(study.Packs.SelectMany(p => study.Faults(p.Supply.Id).Select(f => (Pack: p, Fault: f))), f =>
        [
            ListCell.Of(f.Pack.Number), ListCell.Of(f.Fault.Sight), ListCell.Of(string.Join("; or ", f.Fault.Words)), ListCell.Of(f.Fault.Current), ListCell.Of(f.Fault.Remedy),
        ]));

    internal static TownList Parts(TownStudy study) => new(
        "parts",
        "Parts list",
        ["Part", "For", "Needed", "To spare", "Buy", "Sold as", "Usual cost"],
        Rows(study.PartsList, p => [ListCell.Of(p.Part), ListCell.Of(p.Use), ListCell.Of(p.Needed), ListCell.Of(p.Spares), ListCell.Of(p.Packs), ListCell.Of(p.PackWords), p.Cost is { } cost ? ListCell.Of(cost.Value) : ListCell.Of("")]));

    internal static ItemList<ItemList<ListCell>> Rows<T>(IEnumerable<T> rows, Func<T, ItemList<ListCell>> cells) => rows.Select(cells).ToItemList();
}
