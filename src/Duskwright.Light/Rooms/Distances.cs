namespace Duskwright.Light.Rooms;

/// <summary>The distances between every line of one list and every line of another, each different distance kept once.</summary>
internal sealed class Distances
{
    private readonly int[] _index;
    private readonly int _others;

    private Distances(double[] values, int[] index, int others) => (Values, _index, _others) = (values, index, others);

    /// <summary>The distances that differ, m, rising.</summary>
    internal double[] Values { get; }

    /// <summary>Which of <see cref="Values"/> lies between line i of the first list and line k of the other.</summary>
    internal int this[int i, int k] => _index[(i * _others) + k];

    internal static Distances Between(double[] lines, double[] others)
    {
        var all = new double[lines.Length * others.Length];
        for (var i = 0; i < lines.Length; i++)
        {
            for (var k = 0; k < others.Length; k++)
            {
                all[(i * others.Length) + k] = Math.Abs(lines[i] - others[k]);
            }
        }

        var order = Enumerable.Range(0, all.Length).ToArray();
        Array.Sort((double[])all.Clone(), order);
        var (values, index) = (new List<double>(), new int[all.Length]);
        foreach (var i in order)
        {
            // Rounding apart: a millionth of a millionth of a metre.
            if (values.Count == 0 || all[i] - values[^1] > 1e-12)
            {
                values.Add(all[i]);
            }

            index[i] = values.Count - 1;
        }

        return new Distances([.. values], index, others.Length);
    }
}
