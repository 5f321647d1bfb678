namespace Duskwright.Benchmarks.Harness;

/// <summary>Routes, trunks and sharing against published problems.</summary>
internal static class HarnessBenchmark
{
    internal static int Run(string? instances, bool all)
    {
        if (instances is null || !Directory.Exists(instances))
        {
            Console.WriteLine("No folder of published problems is given (--instances DIR): skipped.");
            return 0;
        }

        var table = new InstanceTable();
        RouteInstances.Run(instances, table);
        SharingInstances.Run(instances, all, table);
        TreeInstances.Run(instances, all, table);
        table.Write();
        return table.Holds ? 0 : 1;
    }
}
