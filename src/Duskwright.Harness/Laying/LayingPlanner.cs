using System.Collections.Immutable;

namespace Duskwright.Harness.Laying;

/// <summary>Orders the laying of pairs and the setting down of houses, so that no pair has to be pulled under a house that stands.</summary>
/// <remarks>A topological order of "covers the wire of" (A. B. Kahn, Topological sorting of large networks, Comm. ACM 5 (1962) 558-562), the maker's own order deciding among what is free.</remarks>
public static class LayingPlanner
{
    /// <summary>Finds the order.</summary>
    /// <param name="problem">The houses.</param>
    /// <returns>The order; always one, with the pairs of a knot pulled first and shut ways named.</returns>
    public static LayingOrder Order(LayingProblem problem)
    {
        var houses = problem.Houses;
        var covers = Covering.Of(houses);
        bool Is(int house, Stands stands) => houses[house].Stands == stands;

        // For each house to come, those to come that would cover its wire: they follow it.
        var followers = houses.Select((_, h) => Is(h, Stands.ToCome) ? covers[h].Where(x => Is(x, Stands.ToCome)).ToList() : []).ToList();
        var knots = Knots.Of(followers);
        var pulledFirst = knots.SelectMany(k => k.First).Order().ToList();
        var steps = ImmutableArray.CreateBuilder<LayingStep>();
        var loose = houses.Select((_, h) => Is(h, Stands.ToCome) ? covers[h].Where(x => Is(x, Stands.Loose)).ToList() : []).ToList();
        var lifted = new SortedSet<int>();
        var waiting = Enumerable.Range(0, houses.Length).Where(h => Is(h, Stands.ToCome)).ToHashSet();
        var pulled = new HashSet<int>();

        foreach (var house in pulledFirst)
        {
            Lift(house);
            Step(LayingAct.PullFirst, house, followers[house]);
            pulled.Add(house);
            Return();
        }

        while (waiting.Count > 0)
        {
            // Free is what covers no wire that is still to be pulled; where a house is lifted already, those that need it come first.
            var free = waiting.Where(h => !waiting.Any(x => x != h && !pulled.Contains(x) && followers[x].Contains(h))).ToList();
            var house = free.OrderBy(h => loose[h].Any(lifted.Contains) ? 0 : 1).ThenBy(h => h).First();
            if (!pulled.Contains(house))
            {
                Lift(house);
            }

            Step(LayingAct.SetDown, house, pulled.Contains(house) ? [] : followers[house]);
            waiting.Remove(house);
            pulled.Add(house);
            Return();
        }

        return new LayingOrder(
            steps.ToImmutable(),
            [.. knots.Select(k => new LayingKnot(Names(k.Round), Names(k.First), k.Exact))],
            [.. houses.SelectMany((a, h) => Is(h, Stands.ToCome) ? covers[h].Where(x => Is(x, Stands.Glued)).Select(x => new CoveredWay(a.Id, houses[x].Id)) : [])])
        {
            Over = [.. houses.SelectMany((a, h) => covers[h].Select(x => new CoveredWay(a.Id, houses[x].Id)))],
        };

        void Lift(int house)
        {
            foreach (var over in loose[house].Where(lifted.Add))
            {
                Step(LayingAct.TakeOut, over, [house]);
            }
        }

        void Return()
        {
            foreach (var over in lifted.Where(l => !waiting.Any(h => !pulled.Contains(h) && loose[h].Contains(l))).ToList())
            {
                lifted.Remove(over);
                Step(LayingAct.PutBack, over, []);
            }
        }

        void Step(LayingAct act, int house, IEnumerable<int> because) => steps.Add(new LayingStep(act, houses[house].Id, Names(because)));

        ImmutableArray<string> Names(IEnumerable<int> indices) => [.. indices.Select(i => houses[i].Id)];
    }
}
