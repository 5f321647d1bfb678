namespace Duskwright.Circuits.Tolerance;

/// <summary>Chance from a seed: a counter whose bits are mixed (Steele, Lea and Flood, Fast Splittable Pseudorandom Number Generators, OOPSLA 2014).</summary>
internal struct SplitMix(ulong seed)
{
    private ulong _counter = seed;

    /// <summary>The next 64 bits.</summary>
    internal ulong Next()
    {
        _counter += 0x9E3779B97F4A7C15;
        var z = _counter;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
