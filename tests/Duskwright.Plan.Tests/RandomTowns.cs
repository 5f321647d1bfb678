using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Tests;

/// <summary>Sound towns at random that use every field of the document.</summary>
internal static class RandomTowns
{
    private static readonly Gen<string> Word = Gen.OneOf("Gull", "Tarn", "Écluse", "Möwe", "water \"gate\"", "O'Fen", "北", "a/b\\c", "tab\there");
    private static readonly Gen<string> Note = Gen.String[Gen.Char.AlphaNumeric, 0, 12];
    private static readonly Gen<double> Share = Gen.Double[0, 1];

    private static readonly Gen<Point> OnBoard = from x in Gen.Double[200, 1000] from y in Gen.Double[200, 600] select Point.At(x, y);
    private static readonly Gen<Length> Size = Gen.Double[0.1, 40].Select(Length.FromMillimetres);
    private static readonly Gen<string> Group = Gen.OneOf("A", "B");
    private static readonly Gen<string> UsualLampId = Gen.OneOf("led-3mm-red", "own-lamp");
    private static readonly Gen<string> UsualWireId = Gen.OneOf("cu-0.20", "own-wire");
    private static readonly Gen<string> LampId = Gen.OneOf(UsualLampId, Gen.Const(PartId.Unknown));
    private static readonly Gen<string> WireId = Gen.OneOf(UsualWireId, Gen.Const(PartId.Unknown));

    private static readonly Gen<ResistorChoice> Resistor = Gen.Frequency(
        (3, Gen.Double[0.1, 1e6].Select(o => ResistorChoice.Of(Resistance.FromOhms(o)))),
        (1, Gen.Const(ResistorChoice.None)),
        (1, Gen.Const(ResistorChoice.Unknown)));

    private static readonly Gen<Lamp> Lamps =
        from name in PerhapsSaid(Word)
        from led in PerhapsSaid(LampId)
        from resistor in PerhapsSaid(Resistor)
        from at in Perhaps(Size).Array[3]
        from grouped in PerhapsSaid(Group)
        from aim in Any<LampAim>()
        select new Lamp { Name = name, Led = led, Resistor = resistor, SwitchGroup = grouped, BehindPane = at[0], FromLeft = at[1], AboveFloor = at[2], Aim = aim };

    private static readonly Gen<Pane> Panes =
        from material in Any<PaneMaterial>()
        from tint in Any<PaneTint>()
        from bars in Gen.Bool
        select new Pane { Material = material, Tint = tint, Bars = bars };

    private static readonly Gen<Window> Windows =
        from wall in Any<WallSide>()
        from left in Perhaps(Gen.Double[0, 10].Select(Length.FromMillimetres))
        from sill in Perhaps(Gen.Double[0, 10].Select(Length.FromMillimetres))
        from size in Gen.Double[1, 10].Array[2]
        from pane in PerhapsSaid(Panes)
        select new Window { Wall = wall, FromLeft = left, Sill = sill, Width = Length.FromMillimetres(size[0]), Height = Length.FromMillimetres(size[1]), Pane = pane };

    private static readonly Gen<Storey> Storeys =
        from name in PerhapsSaid(Word)
        from height in Perhaps(Gen.Double[30, 60].Select(Length.FromMillimetres))
        from rooms in Some(
            from name in PerhapsSaid(Word)
            from width in Perhaps(Size)
            from depth in Perhaps(Size)
            from finish in Perhaps(Any<InteriorFinish>())
            from lamps in Some(Lamps)
            from windows in Some(Windows)
            select new Room { Name = name, Width = width, Depth = depth, Finish = finish, Lamps = lamps, Windows = windows })
        select new Storey { Name = name, Height = height, Rooms = rooms };

    private static readonly Gen<Placement> Places =
        from at in OnBoard
        from turn in Gen.Double[-360, 360]
        from level in PerhapsSaid(Gen.Const("quay"))
        from size in Perhaps(Gen.Double[20, 100].Select(Length.FromMillimetres)).Array[2]
        from corners in Gen.Double[1, 40].Array[3]
        from outlined in Gen.Bool
        from round in Gen.Bool
        select new Placement
        {
            At = at,
            Rotation = Angle.FromDegrees(turn),
            Level = level,
            Width = size[0],
            Depth = size[1],
            Round = round,
            Outline = outlined ? [Point.At(-corners[0], -corners[1]), Point.At(corners[1], -corners[2]), Point.At(0, corners[0])] : [],
        };

    private static readonly Gen<Roof> Roofs =
        from shape in Any<RoofShape>()
        from rise in Perhaps(Size)
        from lifts in Gen.Bool
        from covering in Any<RoofCovering>()
        select new Roof { Shape = shape, Rise = rise, LiftsOff = lifts, Covering = covering };

    private static readonly Gen<BuildWay> Ways =
        from minutes in Gen.Int[1, 200]
        from dry in Gen.Int[0, 3000]
        from which in Gen.Select(Gen.Bool, Gen.Bool, Gen.Bool)
        select new BuildWay
        {
            Changed = [new ChangedStep { Step = "paint", Words = which.Item3 ? "limewash" : null, Minutes = minutes, DryMinutes = which.Item1 ? dry : null, LeftOut = which.Item2 }],
            Added = [new OwnStep { Key = "own-thatch", Words = "lay the thatch", Minutes = minutes, DryMinutes = dry, After = which.Item1 ? "cover" : null, Before = which.Item2 ? "glue-in" : null, Seals = which.Item3, Test = which.Item1 ? new OwnTest { Words = "pair to the test pack", Lit = which.Item2 ? 0 : null, BeforeSeal = which.Item3 } : null }],
            Order = which.Item3 ? ["plan", "own-thatch"] : [],
        };

    private static readonly Gen<Building> Buildings =
        from name in Word
        from words in PerhapsSaid(Note).Array[2]
        from kind in Any<BuildingKind>()
        from state in Any<BuildingState>()
        from leds in Perhaps(Gen.Int[0, 200])
        from parts in Gen.Select(PerhapsSaid(LampId), PerhapsSaid(Resistor), PerhapsSaid(WireId), PerhapsSaid(Group))
        from lengths in Perhaps(Gen.Double[1, 5000].Select(Length.FromMillimetres)).Array[3]
        from hole in PerhapsSaid(Gen.Const("h1"))
        from kept in Gen.Select(PerhapsSaid(Gen.OneOf("1", "2")), PerhapsSaid(Gen.Const("w1")))
        from finish in Perhaps(Any<InteriorFinish>())
        from place in PerhapsSaid(Places)
        from roof in PerhapsSaid(Roofs)
        from storeys in Some(Storeys)
        from way in PerhapsSaid(Ways)
        let lamps = storeys.Sum(s => s.Rooms.Sum(r => r.Lamps.Count))
        select new Building
        {
            Name = name,
            Code = words[0],
            Note = words[1],
            Kind = kind,
            State = state,
            Leds = lamps > 0 ? lamps : leds,
            Led = parts.Item1,
            Resistor = parts.Item2,
            Wire = parts.Item3,
            SwitchGroup = parts.Item4,
            Distance = lengths[0],
            PairLength = lengths[1],
            TailLength = lengths[2],
            FeedHole = hole,
            Tile = hole is null ? null : "east",
            Pack = kept.Item1,
            Wireway = kept.Item2,
            Finish = finish,
            Place = place,
            Roof = roof,
            Storeys = storeys,
            Way = way,
        };

    private static readonly Gen<Board> Boards =
        from climb in Perhaps(Size)
        from pairs in Perhaps(Gen.Int[1, 30])
        from bore in Perhaps(Size)
        from pocket in Perhaps(Size).Array[3]
        from points in OnBoard.Array[8]
        from scenery in Some(from kind in Any<SceneryKind>() from label in PerhapsSaid(Word) from size in Perhaps(Size) from at in OnBoard.Array[3] select new Scenery { Kind = kind, Label = label, Size = size, Points = at.ToItemList() })
        from banked in Gen.Bool
        from photograph in Perhaps(Gen.Bool)
        select new Board
        {
            Width = Length.FromMillimetres(1200),
            Depth = Length.FromMillimetres(800),
            Scenery = scenery,
            Levels = [new Level { Id = "quay", Name = "the quay", Height = climb ?? default, Outline = [points[0], points[1], points[2]] }],
            Wireways = [new Wireway { Id = "w1", Points = [points[3], points[4]], Level = "quay", CapacityPairs = pairs, Climb = climb }],
            FeedHoles = [new FeedHole { Id = "h1", At = points[5], Level = "quay", Bore = bore, Shut = banked }],
            Bank = banked ? new Bank { At = points[6], PocketWidth = pocket[0], PocketDepth = pocket[1], PocketHeight = pocket[2] } : null,
            Photograph = photograph is { } hidden ? new Photograph { Picture = new string('a', 64), At = points[7], Width = Length.FromMillimetres(900), Depth = Length.FromMillimetres(600), Hidden = hidden } : null,
        };

    private static readonly Gen<LogEntry> Entries =
        from day in Gen.Int[0, 3_000]
        from kind in Any<LogKind>()
        from at in Gen.Select(PerhapsSaid(Gen.Const("b0")), PerhapsSaid(Gen.OneOf("1", "2")))
        from current in Perhaps(Gen.Double[0, 500].Select(Current.FromMilliamperes))
        from volts in Perhaps(Gen.Double[0, 12].Select(Voltage.FromVolts))
        from lit in Perhaps(Gen.Int[0, 20])
        from note in PerhapsSaid(Note)
        from more in Gen.Select(PerhapsSaid(Gen.OneOf("fit", "glue-in")), PerhapsSaid(Gen.Const("fed-at-the-bank")), PerhapsSaid(Note))
        from looks in Some(from seen in Any<SeenAs>() select new LampSeen { Lamp = "L1", As = seen })
        from second in Gen.Int[0, 86_399]
        from hours in Perhaps(Gen.Double[0, 24].Select(Duration.FromHours))
        from ohms in Perhaps(Gen.Double[0, 1e6].Select(Resistance.FromOhms))
        from diode in Perhaps(Gen.Double[0, 4].Select(Voltage.FromVolts))
        from over in Gen.Select(Gen.Bool, Gen.Bool, Gen.Bool, PerhapsSaid(Gen.Const(new string('c', 64))))
        select new LogEntry
        {
            Date = new DateOnly(2026, 1, 1).AddDays(day),
            Time = second == 0 ? null : new TimeOnly(0, 0).Add(TimeSpan.FromSeconds(second)),
            Kind = kind == LogKind.Withdrawn ? LogKind.Note : kind,
            Building = at.Item1,
            Supply = at.Item2,
            Step = more.Item1,
            Test = more.Item2,
            Passed = more.Item2 is null ? null : lit > 0,
            Looks = looks.Take(1).ToItemList(),
            Current = current,
            Voltage = volts,
            Resistance = ohms,
            DiodeVoltage = diode,
            ResistanceOver = ohms is null && over.Item1,
            DiodeOver = diode is null && over.Item2,
            Reversed = over.Item3,
            Photograph = over.Item4,
            Lit = lit,
            Burnt = hours,
            Despite = more.Item3,
            Note = note,
        };

    private static readonly Gen<WiringChoices> Wiring =
        from ids in Gen.Select(PerhapsSaid(UsualLampId), PerhapsSaid(UsualWireId), PerhapsSaid(UsualWireId), PerhapsSaid(UsualWireId))
        from resistor in PerhapsSaid(Resistor)
        from current in Perhaps(Gen.Double[0.1, 20].Select(Current.FromMilliamperes))
        from lengths in Perhaps(Size).Array[3]
        from detour in Perhaps(Gen.Double[1, 3])
        from joint in Perhaps(Share.Select(Resistance.FromOhms))
        from spare in Perhaps(Share)
        select new WiringChoices
        {
            Led = ids.Item1,
            Wire = ids.Item2,
            TailWire = ids.Item3,
            ReturnWire = ids.Item4,
            Resistor = resistor,
            LampCurrent = current,
            TailLength = lengths[0],
            Slack = lengths[1],
            ReturnLength = lengths[2],
            DetourFactor = detour,
            JointResistance = joint,
            SpareShare = spare,
        };

    private static readonly Gen<Show> Shows =
        from hours in Gen.Double[0.5, 24]
        from days in Gen.Int[1, 30]
        from light in Perhaps(Gen.Double[0, 1000].Select(Illuminance.FromLux))
        from warmth in Perhaps(Gen.Double[-10, 40])
        from shares in Share.Array[2]
        from step in Gen.Double[0.5, 50]
        from views in Some(from name in Word from x in Gen.Double[-900, 900] from eye in Perhaps(Size) select new ViewingPosition { Name = name, At = Point.At(x, -x), EyeHeight = eye })
        select new Show
        {
            HoursPerDay = Duration.FromHours(hours),
            Days = days,
            RoomIlluminance = light,
            RoomTemperatureC = warmth,
            DimShare = shares[0],
            SpoiledShare = shares[1],
            VisibleStep = step,
            ViewingPositions = views,
        };

    private static readonly Gen<Supply> Supplies =
        from name in PerhapsSaid(Word)
        from cells in Gen.Int[1, 4].Array[2]
        from left in Share
        from fuse in PerhapsSaid(Gen.OneOf("ptc-500ma", "glass-1a"))
        select new Supply { Id = "1", Name = name, Part = "LR6", Series = cells[0], Parallel = cells[1], ChargeLeft = left, Fuse = fuse };

    private static readonly Gen<BenchCalendar> Calendars =
        from hands in Gen.Int[1, 4]
        from day in Any<DayOfWeek>()
        from minutes in Gen.Int[1, 239]
        from start in Gen.Int[0, 500_000]
        select new BenchCalendar
        {
            Hands = hands,
            DryingPlaces = hands == 1 ? null : hands + 3,
            Sessions = [new WeeklySession { Day = day, From = new TimeOnly(20, 0), Minutes = minutes }],
            Steps = [new CalendarStep { Building = "b0", Step = "fit", Start = new DateTime(2026, 1, 1).AddMinutes(start), Minutes = minutes }],
            Finish = new DateTime(2026, 1, 1).AddMinutes(start + minutes),
            FinishAtEarliest = new DateTime(2026, 1, 1).AddMinutes(start),
        };

    private static readonly Gen<Route> Routes =
        from points in OnBoard.Array[2]
        from length in Gen.Double[1, 3000]
        from laid in Gen.Bool
        from wire in PerhapsSaid(Gen.Const("cu-0.20"))
        select new Route { Wire = wire, Building = "b0", Points = points.ToItemList(), Length = Length.FromMillimetres(length), Wireways = ["w1"], Laid = laid };

    // One from the bank and one from that one.
    private static readonly Gen<ItemList<Tap>> Taps =
        from points in OnBoard.Array[2]
        from length in Gen.Double[1, 3000]
        from laid in Gen.Bool
        from wire in PerhapsSaid(Gen.Const("cu-0.20"))
        from some in Gen.Bool
        select some
            ? new (string Id, string? From)[] { ("TA1", null), ("TA2", "TA1") }.Select(t => new Tap { Id = t.Id, SwitchGroup = "A", From = t.From, Points = points.ToItemList(), Length = Length.FromMillimetres(length), Wire = wire, Wireways = ["w1"], Laid = laid }).ToItemList()
            : [];

    /// <summary>Towns without a problem.</summary>
    internal static readonly Gen<Town> Sound =
        from name in Word
        from note in PerhapsSaid(Note)
        from ratio in Perhaps(Gen.Double[1, 400])
        from board in Boards
        from buildings in Buildings.Array[1, 4]
        from supplies in Supplies.Array[2]
        from wiring in Wiring
        from routes in Routes.Array[0, 1]
        from taps in Taps
        from show in Shows
        from own in RandomParts.Own
        from calendar in PerhapsSaid(Calendars)
        from way in PerhapsSaid(Ways)
        from log in Some(Entries)
        from grouped in PerhapsSaid(Word)
        select Joined(Known(new Town
        {
            Name = name,
            Note = note,
            ScaleRatio = ratio,
            Board = board,
            Wiring = wiring,
            Routes = routes.ToItemList(),
            Show = show,
            OwnParts = own,
            Calendar = calendar,
            Ways = way is null ? [] : [new NamedWay { Name = "cottage", Way = way }],
            Log = Marked(log),
            Buildings = buildings.Select((b, i) => b with { Id = $"b{i}" }).ToItemList(),
            Supplies = supplies.Select((s, i) => s with { Id = $"{i + 1}" }).ToItemList(),
            SwitchGroups = [new SwitchGroup { Id = "A", Name = grouped, Supply = "1" }, new SwitchGroup { Id = "B" }],
            Scenes = [new Scene { Name = "late", On = ["A", "B"] }],
            Breakages = [new Breakage { What = (Breaks)(supplies.Length % 9), How = HowOften.Often }],
            Reels = [new Reel { Wire = "cu-0.20", Left = Length.FromMillimetres(1234.5 * supplies.Length) }],
        }), taps);

    // The route begins at a tap where its building hangs on that tap's switch alone.
    private static Town Joined(Town town, ItemList<Tap> taps) => town with
    {
        Taps = taps,
        Routes = town.Routes.Select(r => taps.Count > 0 && SharedRuns.Switches(town.Buildings[0]) is ["A"] ? r with { From = "TA2" } : r).ToItemList(),
    };

    // Where the town has no parts of its own, nothing may ask for them.
    private static Town Known(Town town) => town.OwnParts.Lamps.Count > 0 ? town : town with
    {
        Wiring = town.Wiring with { Led = Built(town.Wiring.Led), Wire = Built(town.Wiring.Wire), TailWire = Built(town.Wiring.TailWire), ReturnWire = Built(town.Wiring.ReturnWire) },
        Buildings = town.Buildings.Select(b => b with
        {
            Led = Built(b.Led),
            Wire = Built(b.Wire),
            Storeys = b.Storeys.Select(s => s with
            {
                Rooms = s.Rooms.Select(r => r with { Lamps = r.Lamps.Select(l => l with { Led = Built(l.Led) }).ToItemList() }).ToItemList(),
            }).ToItemList(),
        }).ToItemList(),
    };

    private static string? Built(string? id) => id?.StartsWith("own-", StringComparison.Ordinal) == true ? null : id;

    private static Gen<T> Any<T>()
        where T : struct, Enum => Gen.Enum<T>();

    private static Gen<T?> Perhaps<T>(Gen<T> gen)
        where T : struct => Gen.Frequency((1, Gen.Const((T?)null)), (2, gen.Select(v => (T?)v)));

    private static Gen<T?> PerhapsSaid<T>(Gen<T> gen)
        where T : class => Gen.Frequency((1, Gen.Const((T?)null)), (2, gen.Select(v => (T?)v)));

    private static Gen<ItemList<T>> Some<T>(Gen<T> gen) => gen.Array[0, 2].Select(a => a.ToItemList());

    // Every second entry has an id, and the one after it corrects it.
    private static ItemList<LogEntry> Marked(IReadOnlyList<LogEntry> log) =>
        log.Select((entry, i) => i % 2 == 0 ? entry with { Id = $"e{i}" } : entry with { Corrects = $"e{i - 1}" }).ToItemList();
}
