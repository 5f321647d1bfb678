using System.Globalization;
using Duskwright.Plan;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Comparing;

/// <summary>Clauses about one thing that become one sentence.</summary>
internal sealed class Clauses
{
    // Two figures that read alike are no change.
    private const double LeastShare = 0.005;

    private readonly List<string> _clauses = [];
    private readonly List<Figure> _figures = [];

    internal int Count => _clauses.Count;

    internal void Add(bool holds, string words)
    {
        if (holds)
        {
            _clauses.Add(words);
        }
    }

    /// <summary>"its pair is {0}, was {1}", where the two differ.</summary>
    internal void Add(string words, Figure? now, Figure? was)
    {
        if (now is not null && was is not null && Math.Abs(now.Value - was.Value) > LeastShare * Math.Max(Math.Abs(now.Value), Math.Abs(was.Value)))
        {
            _clauses.Add(string.Create(CultureInfo.InvariantCulture, $"{words} {{{_figures.Count}}}, was {{{_figures.Count + 1}}}"));
            _figures.AddRange([now, was]);
        }
    }

    /// <summary>A clause with one figure at its end.</summary>
    internal void Add(string words, Figure figure)
    {
        _clauses.Add(string.Create(CultureInfo.InvariantCulture, $"{words} {{{_figures.Count}}}"));
        _figures.Add(figure);
    }

    internal SaidChange Sentence(string about) => new($"{about}: {string.Join("; ", _clauses)}.", _figures.ToItemList());
}
