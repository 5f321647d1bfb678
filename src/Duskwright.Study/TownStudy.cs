using Duskwright.Faults.Finding;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Study.Bench;
using Duskwright.Study.Figures;
using Duskwright.Study.Findings;
using Duskwright.Study.Lists;
using Duskwright.Study.Mending;
using Duskwright.Study.Operation;
using Duskwright.Study.Results;
using Duskwright.Study.Wiring;

namespace Duskwright.Study;

/// <summary>Everything computed for a town. It only analyses: the same town always gives the same results.</summary>
/// <remarks>
/// Results are computed when first asked for and kept. A study made by <see cref="After"/> takes over every answer whose inputs
/// have not changed, so that an edit of one building costs about that building's circuit. Safe for several threads.
/// </remarks>
public sealed class TownStudy
{
    private readonly Memo _memo;
    private readonly Lazy<ResolvedTown> _resolved;
    private readonly Lazy<CircuitResults> _circuits;
    private readonly Lazy<RunCompany> _company;
    private readonly Lazy<ItemList<BuildingResult>> _buildings;
    private readonly Lazy<ItemList<PaneResult>> _panes;
    private readonly Lazy<ItemList<PackResult>> _packs;
    private readonly Lazy<ItemList<Finding>> _findings;
    private readonly Lazy<ItemList<PaneSight>> _sights;
    private readonly Lazy<ItemList<RoomLeaks>> _leaks;
    private readonly Lazy<ItemList<PaneEvenness>> _evenness;
    private readonly Lazy<ItemList<SwitchRow>> _switches;
    private readonly Lazy<ItemList<LabelRow>> _labels;
    private readonly Lazy<ItemList<CutRow>> _cuts;
    private readonly Lazy<ItemList<PartsRow>> _parts;
    private readonly Lazy<ItemList<SceneResult>> _scenes;
    private readonly Lazy<LayingList> _laying;
    private readonly Lazy<ItemList<WireCuts>> _reelCuts;

    private TownStudy(Town town, Memo memo)
    {
        Town = town;
        _memo = memo;
        _resolved = new(() => ResolvedTown.Of(town, _memo));
        _circuits = new(() => CircuitResults.Of(_resolved.Value, _memo));
        _company = new(() => new RunCompany(_resolved.Value));
        _buildings = new(() => BuildingResults.Of(_resolved.Value, _circuits.Value, _company.Value, _memo));
        _panes = new(() => Buildings.AsParallel().AsOrdered().SelectMany(b => b.Panes).ToItemList());
        _packs = new(() => PackResults.Of(_resolved.Value, _circuits.Value, _memo));
        _findings = new(() => FindingRules.Of(this, _memo));
        _sights = new(() => PaneSights.Of(_resolved.Value, _circuits.Value, Buildings));
        _leaks = new(() => RoomLeaks.Of(_resolved.Value, _circuits.Value, _memo));
        _evenness = new(() => PaneEvenness.Of(this));
        _switches = new(() => SwitchRows.Of(_resolved.Value, _memo));
        _labels = new(() => LabelRows.Of(this));
        _cuts = new(() => CutRows.Of(this, _resolved.Value));
        _parts = new(() => PartsRows.Of(_resolved.Value));
        _laying = new(() => LayingRows.Of(_resolved.Value));
        _reelCuts = new(() => _memo.Get((Reels: town.Reels, Cuts: CutList, town.OwnParts.Wires), q => ReelPlan.Of(town, q.Cuts)));
        _scenes = new(() => SceneResults.Of(_resolved.Value, _memo));
    }

    /// <summary>The town.</summary>
    public Town Town { get; }

    /// <summary>Every lamp, by building in the order of the document.</summary>
    public ItemList<LampResult> Lamps => Buildings.SelectMany(b => b.Lamps).ToItemList();

    /// <summary>Every described pane with a lamp behind it, by building in the order of the document.</summary>
    public ItemList<PaneResult> Panes => _panes.Value;

    /// <summary>What is seen through each pane from where people stand, in the order of <see cref="Panes"/>.</summary>
    public ItemList<PaneSight> Sights => _sights.Value;

    /// <summary>Where the light of each lit room would show that should not, by building in the order of the document.</summary>
    public ItemList<RoomLeaks> Leaks => _leaks.Value;

    /// <summary>How each pane compares with the brightest glazed alike, when the show begins and when it ends.</summary>
    public ItemList<PaneEvenness> Evenness => _evenness.Value;

    /// <summary>Where one more lamp or another resistor buys the most at the end of the show, the best first.</summary>
    public ItemList<LightGain> LightGains => LightGain.Of(this);

    /// <summary>How to photograph the town; none where no pane is described.</summary>
    public CameraResult? Camera => CameraResult.Of(this);

    /// <summary>How much of the view flickers, from each place people look from; none where nothing flickers behind a described pane.</summary>
    public ItemList<FlickerResult> Flicker => FlickerResult.Of(_resolved.Value, _circuits.Value, Buildings);

    /// <summary>Three seconds of each window of a building with flickering lamps behind it, as chance might have them.</summary>
    /// <param name="building">Its key.</param>
    /// <returns>One for each such window; none where nothing flickers.</returns>
    public ItemList<PaneFlicker> FlickerOf(string building) => PaneFlicker.Of(this, building);

    /// <summary>The houses whose windows differ in colour so that it is noticed, each with its most unlike two, the most unlike first.</summary>
    public ItemList<UnlikeColours> UnlikeColours => Results.UnlikeColours.Of(this);

    /// <summary>How far the cells of each pack are by the log, when they are due, and what to pack as spares.</summary>
    public ItemList<PackRunning> Running => PackRunning.Of(this);

    /// <summary>How long each kind of lamp lives when the town is lit as its show says.</summary>
    public ItemList<LampLife> LampLives => LampLife.Of(this);

    /// <summary>What the panes of a building would be with its rooms painted black throughout, and with white inside; computed when it is asked for.</summary>
    /// <param name="building">Its key.</param>
    /// <returns>One for each of its panes, in their order; none where it has none.</returns>
    public ItemList<PaneFinishes> Finishes(string building) => PaneFinishes.Of(_resolved.Value, _circuits.Value, Buildings, building, _memo);

    /// <summary>The wire of a pair for which no other is said.</summary>
    public WirePart UsualWire => Usual.WireOf(Town, null);

    /// <summary>Every building in the order of the document.</summary>
    public ItemList<BuildingResult> Buildings => _buildings.Value;

    /// <summary>Every supply in the order of the document.</summary>
    public ItemList<PackResult> Packs => _packs.Value;

    /// <summary>Every scene in the order of the document, each solved with its own switches on.</summary>
    public ItemList<SceneResult> Scenes => _scenes.Value;

    /// <summary>What is worth saying, the most serious first.</summary>
    public ItemList<Finding> Findings => _findings.Value;

    /// <summary>What each building takes and from where.</summary>
    public ItemList<LoadRow> LoadList => LoadRows.Of(this);

    /// <summary>What each switch lights.</summary>
    public ItemList<SwitchRow> SwitchList => _switches.Value;

    /// <summary>The leads to cut.</summary>
    public ItemList<CutRow> CutList => _cuts.Value;

    /// <summary>Which lead is cut from which reel, wire by wire; leads that are laid are not cut again.</summary>
    public ItemList<WireCuts> ReelCuts => _reelCuts.Value;

    /// <summary>The joints that are still to be made, and their sleeves.</summary>
    public ItemList<JointRow> Joints => JointRows.Of(_resolved.Value);

    /// <summary>The ends of the leads to cut: how much to bare and what to do then.</summary>
    public ItemList<EndRow> Ends => EndRows.Of(Town, CutList);

    /// <summary>The order in which pairs are pulled and houses set down.</summary>
    public LayingList Laying => _laying.Value;

    /// <summary>What to buy for the houses that are not fitted yet, and cells for the show.</summary>
    public ItemList<PartsRow> PartsList => _parts.Value;

    /// <summary>What the parts list costs at usual prices.</summary>
    public Figure PartsCost => Figure.From(Laws.Sum, "cost of the parts list", "money", [.. PartsList.Where(p => p.Cost is not null).Select(p => p.Cost!)]);

    /// <summary>A label for each pair.</summary>
    public ItemList<LabelRow> Labels => _labels.Value;

    /// <summary>The cautions that go with this town's work.</summary>
    public ItemList<Caution> Cautions => CautionRules.Of(Town);

    /// <summary>How far the work on a building is.</summary>
    /// <param name="building">Its key.</param>
    /// <returns>Its steps and tests; none where there is no such building.</returns>
    public HouseWork? Work(string building) =>
        Buildings.FirstOrDefault(b => b.Building.Key == building) is { } house ? HouseWork.Of(Town, house.Building, house.Tests.Select(t => t.Key)) : null;

    /// <summary>What each single fault on a pack would look like, those that look alike together; computed when it is asked for.</summary>
    /// <param name="supply">The id of a supply with lamps.</param>
    /// <returns>The faults; empty where it lights nothing.</returns>
    public ItemList<FaultSuspect> Faults(string supply) => Search(supply)?.All() ?? [];

    /// <summary>What may have broken, from what is lit, dim and dark; a reading sharpens it.</summary>
    /// <param name="question">What the maker sees.</param>
    /// <returns>Suspects, the likeliest first; none where the pack lights nothing.</returns>
    public FaultAnswer WhatBroke(FaultQuestion question) => Search(question.Supply)?.Answer(question) ?? new FaultAnswer([], null, false);

    /// <summary>What a test of a house says: passed, or what may be wrong; the volts read and the last sound reading in the log sharpen it.</summary>
    /// <param name="building">The building's key.</param>
    /// <param name="test">The test's key.</param>
    /// <param name="result">What was seen, and read if there is a meter.</param>
    /// <returns>The verdict; none where there is no such test.</returns>
    public TestVerdict? Judge(string building, string test, TestOutcome result)
    {
        var house = Buildings.FirstOrDefault(b => b.Building.Key == building);
        if (house?.Tests.FirstOrDefault(t => t.Key == test) is not { } point)
        {
            return null;
        }

        var queries = AllAtTheBank(building).Where(q => point.Supply is null || q.Supply == point.Supply).ToList();
        TestPointQuery On(string supply) => queries.First(q => q.Supply == supply);
        return new TestJudge(house, point, queries, Town.StandingLog().ToList(), question => Search(question.Supply, (point.IsAtTheBank ? On(question.Supply) : On(question.Supply).OnTestPack()).Typical)!.Answer(question)).Judge(result);
    }

    /// <summary>What parts as they are sold make of a pack; computed when it is asked for, some tenths of a second a pack.</summary>
    /// <param name="supply">The id of a supply.</param>
    /// <returns>The spread; none where it lights nothing.</returns>
    public SpreadResult? Spread(string supply) =>
        SpreadQuery.Of(_resolved.Value).FirstOrDefault(q => q.Typical.Packs.Any(p => p.Supply == supply)) is { } query
            ? _memo.Get(query, q => q.Answer()).First(r => r.Supply == supply)
            : null;

    /// <summary>Studies a town from nothing.</summary>
    /// <param name="town">A town without problems (<see cref="Plan.Checks.TownChecks"/>).</param>
    /// <returns>Its study.</returns>
    public static TownStudy Of(Town town) => new(town, new Memo(null));

    /// <summary>Studies the town after an edit, keeping every answer that still holds.</summary>
    /// <param name="edited">The town after the edit.</param>
    /// <returns>The same as <see cref="Of"/> would give, sooner.</returns>
    public TownStudy After(Town edited) => new(edited, new Memo(_memo));

    /// <summary>The town at one hour of the show.</summary>
    /// <param name="hour">Hours burnt, from 0.</param>
    /// <param name="roomLux">Light in the room, lx; none to leave open what reads as lit.</param>
    /// <returns>Lamps and packs then.</returns>
    public Moment At(double hour, double? roomLux = null) => Moments.Of(this, hour, roomLux);

    /// <summary>The town at the start of the show with some of its switches fed by other pairs than it says.</summary>
    /// <param name="feeds">The switches that are fed otherwise; each names every building with lamps on it.</param>
    /// <returns>Every building with lamps on a supply, in the order of the document.</returns>
    public ItemList<FedBuilding> FedBy(ItemList<SwitchFeed> feeds) => FeedQuery.Of(_resolved.Value, feeds, _memo);

    /// <summary>Buildings of one supply as they would be on one pair of plugs and pieces, each piece after the one that feeds it; those not named are unplugged.</summary>
    /// <param name="supply">The id of a supply with lamps.</param>
    /// <param name="pieces">The pieces.</param>
    /// <param name="houses">The junction each building hangs at.</param>
    /// <returns>Volts, currents and light.</returns>
    public BusResult OnBus(string supply, ItemList<BusPiece> pieces, ItemList<FeedHouse> houses) => BusQuery.Of(_resolved.Value, supply, pieces, houses);

    /// <summary>How the fresh light of every lamp differs from what it was in an earlier state of the town.</summary>
    /// <param name="before">That state.</param>
    /// <returns>One for each lamp that both states feed and that shone before.</returns>
    public ItemList<LampChange> LampsSince(TownStudy before)
    {
        ArgumentNullException.ThrowIfNull(before);
        return LampChange.Between(before._circuits.Value, _circuits.Value);
    }

    /// <summary>Whether a building hangs on one pair of its own, which can be taken off the bank and put on a meter.</summary>
    /// <param name="building">The building's key.</param>
    /// <param name="supply">The id of the supply at whose end of the bank; none for a building that hangs on one alone.</param>
    /// <returns>False also where it has no lamps that are fed.</returns>
    public bool HasOnePair(string building, string? supply = null) => AtTheBank(building, supply)?.OffTheBank() is not null;

    private TestPointQuery? AtTheBank(string building, string? supply)
    {
        var queries = AllAtTheBank(building);
        return supply is not null || queries.Count == 1 ? queries.FirstOrDefault(q => supply is null || q.Supply == supply) : null;
    }

    private ItemList<TestPointQuery> AllAtTheBank(string building) =>
        _resolved.Value.Buildings.FirstOrDefault(b => b.Building.Key == building) is { } resolved ? TestPointQuery.AtTheBank(resolved, _circuits.Value, _company.Value) : [];

    private FaultTable OnSwitch(string supply, CircuitInput input, string group)
    {
        var alone = input.Packs.First(p => p.Supply == supply);
        return _memo.Get(new FaultTableQuery(input with { Packs = [alone with { Groups = alone.Groups.Where(g => g.Id == group).ToItemList() }] }), q => q.Answer());
    }

    private PairToRead? PairToRead(string building, string supply) =>
        AtTheBank(building, supply)?.OffTheBank() is { } input ? _memo.Get(new PairToReadQuery(building, input), q => q.Answer()) : null;

    private FaultSearch? Search(string supply) => CircuitInputs.Of(_resolved.Value, Corner.Typical).FirstOrDefault(i => i.Packs.Any(p => p.Supply == supply)) is { } input
        ? Search(supply, input)
        : null;

    private FaultSearch? Search(string supply, CircuitInput input)
    {
        var pack = Packs.FirstOrDefault(p => p.Supply.Id == supply && p.Lamps > 0);
        return pack is null
            ? null
            : new FaultSearch(_memo.Get(new FaultTableQuery(input), q => q.Answer()), Buildings.ToDictionary(b => b.Building.Key, StringComparer.Ordinal), pack, key => AtTheBank(key, supply), key => PairToRead(key, supply), group => OnSwitch(supply, input, group), MakersPriors.Of(Town));
    }
}
