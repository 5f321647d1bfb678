using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Study.Bench;

namespace Duskwright.Towns;

/// <summary>What a form on the page of a house's steps sends, read into an edit.</summary>
public static class BenchWay
{
    private const double MostHours = 1440;

    /// <summary>Reads the fields of a form.</summary>
    /// <param name="fields">The fields by name: <c>what</c> (change, leave-out, put-back, add, take-out, earlier, later, usual, keep or like), <c>building</c>, <c>step</c>, <c>words</c>, <c>minutes</c>, <c>dry</c> in hours, <c>after</c>, <c>before</c>, <c>seals</c>, <c>name</c>, and for a test of an own step <c>test</c>, <c>lit</c> (empty for all) and <c>before-seal</c>.</param>
    /// <param name="town">The town.</param>
    /// <returns>The edit, or in one sentence why there is none.</returns>
    public static (TownEdit? Edit, string? Why) Read(IReadOnlyDictionary<string, string> fields, Town town)
    {
        string? Said(string name) => fields.TryGetValue(name, out var text) && !string.IsNullOrWhiteSpace(text) ? text.Trim() : null;

        if (town.Buildings.FirstOrDefault(b => b.Key == Said("building")) is not { } house)
        {
            return (null, "There is no such house in this town any more.");
        }

        var (way, what, key) = (house.Way ?? new BuildWay(), Said("what"), Said("step"));
        var steps = BuildSteps.All(town, house);
        var step = steps.FirstOrDefault(s => s.Key == key);
        (TownEdit?, string?) To(BuildWay? next) => (new BuildInOwnWay(house.Key, next), null);
        switch (what)
        {
            case "usual":
                return To(null);
            case "keep":
                return Said("name") is { } name ? (new KeepWay(new NamedWay { Name = name, Way = way }), null) : (null, "Give the steps a name to keep them under.");
            case "like":
                return town.Ways.FirstOrDefault(w => w.Name == Said("name")) is { } kept ? To(kept.Way) : (null, "No steps are kept under that name.");
            case "put-back":
                return To(way with { Changed = way.Changed.Where(c => c.Step != key).ToItemList() });
            case "earlier" or "later" when step is not null:
                return Moved(house, steps, step, what == "earlier" ? -1 : 1);
            case "leave-out" when step is { IsOwn: false }:
                return step.MayBeLeftOut
                    ? To(way with { Changed = way.Changed.Where(c => c.Step != key).Append(new ChangedStep { Step = step.Key, LeftOut = true }).ToItemList() })
                    : (null, $"“{step.Words}” is tested or seals: it is not left out. At the bench it can be ticked with a reason.");
            case "take-out" when step is { IsOwn: true }:
                return To(way with { Added = way.Added.Where(a => a.Key != key).ToItemList(), Order = way.Order.Where(k => k != key).ToItemList() });
        }

        if (what is not ("add" or "change") || (what == "change" && step is null))
        {
            return (null, "The form does not say what is to be changed.");
        }

        if (Said("words") is not { } words)
        {
            return (null, "Say in a few words what is done.");
        }

        if (!int.TryParse(Said("minutes"), NumberStyles.None, CultureInfo.InvariantCulture, out var minutes))
        {
            return (null, $"“{Said("minutes")}” is not a number of minutes; write 15.");
        }

        if (!double.TryParse((Said("dry") ?? "0").Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var hours) || hours is not (>= 0 and <= MostHours))
        {
            return (null, $"“{Said("dry")}” is not a number of hours to dry; write 2 or 0.5, at most {MostHours:0}.");
        }

        var dry = (int)Math.Round(hours * 60);
        if (what == "change" && step is { IsOwn: false })
        {
            var change = new ChangedStep { Step = step.Key, Words = words, Minutes = minutes, DryMinutes = dry == step.DryMinutes ? way.Changed.FirstOrDefault(c => c.Step == key)?.DryMinutes : dry };
            return To(way with { Changed = way.Changed.Where(c => c.Step != key).Append(change).ToItemList() });
        }

        int? lit = null;
        if (Said("lit") is { } count)
        {
            if (!int.TryParse(count, NumberStyles.None, CultureInfo.InvariantCulture, out var lamps))
            {
                return (null, $"“{count}” is not a number of lamps; write 0 or more, or leave it empty for all.");
            }

            lit = lamps;
        }

        var test = Said("test") is { } touch ? new OwnTest { Words = touch, Lit = lit, BeforeSeal = Said("before-seal") is not null } : null;
        var own = new OwnStep { Key = key ?? FreeKey(words, steps), Words = words, Minutes = minutes, DryMinutes = dry, After = Said("after"), Before = Said("before"), Seals = Said("seals") is not null, Test = test };
        return To(way with { Added = what == "add" ? way.Added.Add(own) : way.Added.Select(a => a.Key == key ? own : a).ToItemList() });
    }

    private static (TownEdit? Edit, string? Why) Moved(Building house, ItemList<BenchStep> steps, BenchStep step, int by)
    {
        var at = steps.ToList().FindIndex(s => s.Key == step.Key);
        if (at + by < 0 || at + by >= steps.Count)
        {
            return (null, $"“{step.Words}” is the {(by < 0 ? "first" : "last")} already.");
        }

        var (first, second) = by < 0 ? (steps[at - 1], step) : (step, steps[at + 1]);
        if (second.After.Any(w => w.Step == first.Key))
        {
            return (null, $"“{second.Words}” waits for “{first.Words}” and cannot come before it.");
        }

        var order = steps.Select(s => s.Key).ToList();
        (order[at], order[at + by]) = (order[at + by], order[at]);
        return (new BuildInOwnWay(house.Key, (house.Way ?? new BuildWay()) with { Order = order.ToItemList() }), null);
    }

    private static string FreeKey(string words, ItemList<BenchStep> steps)
    {
        var stem = $"own-{Slug.Of(words)}";
        var key = stem;
        for (var i = 2; steps.Any(s => s.Key == key); i++)
        {
            key = string.Create(CultureInfo.InvariantCulture, $"{stem}-{i}");
        }

        return key;
    }
}
