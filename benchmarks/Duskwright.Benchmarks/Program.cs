using Duskwright.Benchmarks;

return args switch
{
    ["study"] => StudyBenchmark.Run(),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("Name a room: study.");
    return 2;
}
