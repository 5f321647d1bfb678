using System.Collections.Immutable;

namespace Duskwright.Harness.Sharing;

/// <summary>The best fillings of one pack when every load has a worth: dynamic programming over the capacity.</summary>
/// <remarks>S. Martello and P. Toth, Knapsack Problems, Wiley 1990, chapter 3 (bounded knapsack).</remarks>
internal sealed class Knapsack
{
    private readonly int _kind;
    private readonly int _capacity;
    private readonly ImmutableArray<LoadClass> _classes;
    private readonly double[] _worth;

    // _best[i][c]: the greatest worth of classes i and after in capacity c.
    private readonly double[][] _best;

    internal Knapsack(int kind, int capacity, ImmutableArray<LoadClass> classes, double[] worth)
    {
        (_kind, _capacity, _classes, _worth) = (kind, capacity, classes, worth);
        _best = new double[classes.Length + 1][];
        _best[classes.Length] = new double[capacity + 1];
        for (var i = classes.Length - 1; i >= 0; i--)
        {
            var best = (double[])_best[i + 1].Clone();
            var take = classes[i].Take[kind];
            for (var copy = 0; worth[i] > 0 && copy < classes[i].Loads.Length && (long)(copy + 1) * take <= capacity; copy++)
            {
                for (var c = capacity; c >= take; c--)
                {
                    best[c] = Math.Max(best[c], best[c - take] + worth[i]);
                }
            }

            _best[i] = best;
        }
    }

    internal double Greatest => _best[0][_capacity];

    internal int[] Best()
    {
        var counts = new int[_classes.Length];
        var room = _capacity;
        for (var i = 0; i < counts.Length; i++)
        {
            counts[i] = Enumerable.Range(0, Most(i, room) + 1).MaxBy(n => (n * _worth[i]) + _best[i + 1][room - (n * _classes[i].Take[_kind])]);
            room -= counts[i] * _classes[i].Take[_kind];
        }

        return counts;
    }

    /// <summary>Every filling worth at least so much, until there are too many.</summary>
    /// <returns>The fillings, and whether these are all.</returns>
    internal (List<int[]> Fillings, bool All) AtLeast(double worth, int most)
    {
        var found = new List<int[]>();
        var counts = new int[_classes.Length];
        return (found, Extend(0, _capacity, 0));

        bool Extend(int i, int room, double soFar)
        {
            if (soFar + _best[i][room] < worth)
            {
                return true;
            }

            if (i == counts.Length)
            {
                found.Add((int[])counts.Clone());
                return found.Count < most;
            }

            var going = true;
            for (var n = Most(i, room); n >= 0 && going; n--)
            {
                counts[i] = n;
                going = Extend(i + 1, room - (n * _classes[i].Take[_kind]), soFar + (n * _worth[i]));
            }

            counts[i] = 0;
            return going;
        }
    }

    private int Most(int i, int room) => _classes[i].Take[_kind] == 0 ? _classes[i].Loads.Length : Math.Min(_classes[i].Loads.Length, room / _classes[i].Take[_kind]);
}
