namespace Duskwright.Harness.Trunks;

/// <summary>Shortest spanning tree of the bank and one pack's buildings (R. C. Prim, 1957).</summary>
internal sealed class GroupTree
{
    private readonly double[][] _metres;
    private readonly double[] _nearest;
    private readonly int[] _by;

    internal GroupTree(double[][] metres)
    {
        _metres = metres;
        (_nearest, _by) = (new double[metres.Length], new int[metres.Length]);
    }

    /// <summary>Its length; the members' order is changed to the order in which they were joined.</summary>
    internal double Metres(Span<int> members, Span<int> parents)
    {
        var bank = _metres[0];
        for (var i = 0; i < members.Length; i++)
        {
            (_nearest[i], _by[i]) = (bank[members[i]], 0);
        }

        var sum = 0.0;
        for (var joined = 0; joined < members.Length; joined++)
        {
            var next = joined;
            for (var i = joined + 1; i < members.Length; i++)
            {
                if (_nearest[i] < _nearest[next])
                {
                    next = i;
                }
            }

            (members[joined], members[next]) = (members[next], members[joined]);
            (_nearest[joined], _nearest[next]) = (_nearest[next], _nearest[joined]);
            (_by[joined], _by[next]) = (_by[next], _by[joined]);
            sum += _nearest[joined];
            if (!parents.IsEmpty)
            {
                parents[joined] = _by[joined];
            }

            var row = _metres[members[joined]];
            for (var i = joined + 1; i < members.Length; i++)
            {
                if (row[members[i]] < _nearest[i])
                {
                    (_nearest[i], _by[i]) = (row[members[i]], members[joined]);
                }
            }
        }

        return sum;
    }
}
