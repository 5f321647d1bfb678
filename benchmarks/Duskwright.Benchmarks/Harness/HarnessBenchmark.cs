namespace Duskwright.Benchmarks.Harness;

/// <summary>Routes, trunks and sharing against published problems.</summary>
internal static class HarnessBenchmark
{
    internal static int Run(string? instances, bool all)
    {
        var goals = TownGoals.Run();
        if (instances is null || !Directory.Exists(instances))
        {
            Console.WriteLine("No folder of published problems is given (--instances DIR): skipped.");
            return goals ? 0 : 1;
        }

        var table = new InstanceTable();
        RouteInstances.Run(instances, table);
        SharingInstances.Run(instances, all, table);
        TreeInstances.Run(instances, all, table);
        table.Write();
        return goals && table.Holds ? 0 : 1;
    }
}
