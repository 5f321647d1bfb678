namespace Duskwright.Circuits.Solving;

/// <summary>LDLᵀ of a symmetric positive definite matrix whose pattern stays while its values change.</summary>
/// <remarks>
/// Right-looking, after George and Liu (1981), chapter 2. Where every value goes is worked out once; a factorisation then is a run
/// through plain arrays. <c>_diagonal[k]</c> is D, <c>_below[…]</c> the columns of L one after the other, both in the order of elimination.
/// </remarks>
internal sealed class SparseLdl
{
    private readonly int[] _place;
    private readonly int[] _order;
    private readonly int[] _columnStart;
    private readonly int[] _row;
    private readonly int[] _target;
    private readonly double[] _diagonal;
    private readonly double[] _below;
    private readonly double[] _work;

    internal SparseLdl(int count, IReadOnlyList<(int A, int B)> edges)
    {
        var elimination = EliminationOrder.Of(count, edges);
        _order = elimination.Order;
        _place = new int[count];
        _columnStart = new int[count + 1];
        for (var k = 0; k < count; k++)
        {
            _place[_order[k]] = k;
            _columnStart[k + 1] = _columnStart[k] + elimination.Later[k].Length;
        }

        _row = [.. elimination.Later.SelectMany(rows => rows)];
        _diagonal = new double[count];
        _below = new double[_row.Length];
        _work = new double[count];

        var targets = new List<int>();
        for (var k = 0; k < count; k++)
        {
            var rows = elimination.Later[k];
            for (var i = 0; i < rows.Length; i++)
            {
                for (var j = i + 1; j < rows.Length; j++)
                {
                    targets.Add(IndexInOrder(rows[i], rows[j]));
                }
            }
        }

        _target = [.. targets];
    }

    /// <summary>Where the entry of two nodes is kept; the same for either order.</summary>
    internal int IndexOf(int a, int b) => IndexInOrder(Math.Min(_place[a], _place[b]), Math.Max(_place[a], _place[b]));

    internal void Clear()
    {
        Array.Clear(_diagonal);
        Array.Clear(_below);
    }

    internal void AddDiagonal(int node, double value) => _diagonal[_place[node]] += value;

    internal void AddBelow(int index, double value) => _below[index] += value;

    /// <summary>Factorises what has been added. False where a pivot is not positive, which is where a part floats.</summary>
    internal bool Factorise()
    {
        var target = 0;
        for (var k = 0; k < _diagonal.Length; k++)
        {
            var pivot = _diagonal[k];
            if (!(pivot > 0) || !double.IsFinite(pivot))
            {
                return false;
            }

            var (start, end) = (_columnStart[k], _columnStart[k + 1]);
            for (var i = start; i < end; i++)
            {
                var factor = _below[i] / pivot;
                _diagonal[_row[i]] -= factor * _below[i];
                for (var j = i + 1; j < end; j++)
                {
                    _below[_target[target++]] -= factor * _below[j];
                }
            }

            for (var i = start; i < end; i++)
            {
                _below[i] /= pivot;
            }
        }

        return true;
    }

    /// <summary>Solves in place: on entry the right side by node, on return the solution by node.</summary>
    internal void Solve(Span<double> values)
    {
        for (var k = 0; k < _work.Length; k++)
        {
            _work[k] = values[_order[k]];
        }

        for (var k = 0; k < _work.Length; k++)
        {
            for (var i = _columnStart[k]; i < _columnStart[k + 1]; i++)
            {
                _work[_row[i]] -= _below[i] * _work[k];
            }
        }

        for (var k = _work.Length - 1; k >= 0; k--)
        {
            var value = _work[k] / _diagonal[k];
            for (var i = _columnStart[k]; i < _columnStart[k + 1]; i++)
            {
                value -= _below[i] * _work[_row[i]];
            }

            _work[k] = value;
        }

        for (var k = 0; k < _work.Length; k++)
        {
            values[_order[k]] = _work[k];
        }
    }

    private int IndexInOrder(int column, int row)
    {
        var index = Array.BinarySearch(_row, _columnStart[column], _columnStart[column + 1] - _columnStart[column], row);
        return index >= 0 ? index : throw new InvalidOperationException($"Nodes {_order[column]} and {_order[row]} are not joined.");
    }
}
