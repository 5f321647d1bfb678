namespace Duskwright.Light.Rooms;

/// <summary>How each interval between the lines of one list lies to each interval of another; ways that come again are kept once.</summary>
internal sealed class Spans
{
    private readonly int[] _index;
    private readonly int _others;

    private Spans((int Near, int One, int Other, int Far)[] ways, int[] index, int others) => (Ways, _index, _others) = (ways, index, others);

    /// <summary>What lies between the ends of two intervals: both first ends, a first and a second either way round, both second ends.</summary>
    internal (int Near, int One, int Other, int Far)[] Ways { get; }

    /// <summary>Which of <see cref="Ways"/> interval i of the first list has to interval k of the other.</summary>
    internal int this[int i, int k] => _index[(i * _others) + k];

    /// <summary>Finds the ways that differ.</summary>
    /// <param name="between">What lies between line i of the first list and line k of the other.</param>
    /// <param name="lines">Number of lines of the first list.</param>
    /// <param name="others">Number of lines of the other.</param>
    /// <returns>The ways.</returns>
    internal static Spans Of(Func<int, int, int> between, int lines, int others)
    {
        var (ways, known, index) = (new List<(int, int, int, int)>(), new Dictionary<(int, int, int, int), int>(), new int[(lines - 1) * (others - 1)]);
        for (var i = 0; i < lines - 1; i++)
        {
            for (var k = 0; k < others - 1; k++)
            {
                // The two in the middle count alike, so an interval to the left and one as far to the right are one way.
                var (one, other) = (between(i + 1, k), between(i, k + 1));
                var way = (between(i, k), Math.Min(one, other), Math.Max(one, other), between(i + 1, k + 1));
                if (!known.TryGetValue(way, out var at))
                {
                    known.Add(way, at = ways.Count);
                    ways.Add(way);
                }

                index[(i * (others - 1)) + k] = at;
            }
        }

        return new Spans([.. ways], index, others - 1);
    }
}
