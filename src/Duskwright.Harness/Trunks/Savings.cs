namespace Duskwright.Harness.Trunks;

/// <summary>The savings rule: every building starts on a run of its own; two groups merge where that saves most and a pack can carry both.</summary>
internal static class Savings
{
    internal static List<int[]> Groups(PackTreeProblem problem)
    {
        var n = problem.Load.Length;
        var groupOf = Enumerable.Range(0, n).ToArray();
        var members = Enumerable.Range(0, n).Select(i => new List<int> { i }).ToArray();
        var load = problem.Load.ToArray();
        var toBank = problem.Metres[0].ToArray();
        var order = new PriorityQueue<(int From, int To, double Stale), double>();
        for (var i = 1; i < n; i++)
        {
            for (var j = 1; j < n; j++)
            {
                if (i != j)
                {
                    order.Enqueue((i, j, toBank[i]), problem.Metres[i][j] - toBank[i]);
                }
            }
        }

        // A building's group is tied to the bank by its shortest piece: joining it elsewhere saves that piece.
        while (order.TryDequeue(out var join, out var saving) && saving < 0)
        {
            var (a, b) = (groupOf[join.From], groupOf[join.To]);
            if (a == b || load[a] + load[b] > problem.Capacity)
            {
                continue;
            }

            if (join.Stale > toBank[a])
            {
                order.Enqueue((join.From, join.To, toBank[a]), problem.Metres[join.From][join.To] - toBank[a]);
                continue;
            }

            foreach (var i in members[a])
            {
                groupOf[i] = b;
                members[b].Add(i);
            }

            load[b] += load[a];
            members[a].Clear();
        }

        return [.. members.Skip(1).Where(m => m.Count > 0).Select(m => m.ToArray())];
    }
}
