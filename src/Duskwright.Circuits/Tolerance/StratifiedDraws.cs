namespace Duskwright.Circuits.Tolerance;

/// <summary>A block of draws that is spread evenly along every dimension.</summary>
/// <remarks>
/// Latin hypercube sampling: each dimension is cut into as many strips as there are draws, each strip is hit once, in an order of its own
/// (McKay, Beckman and Conover, Technometrics 21 (1979) 239). It needs no more draws for a thousand dimensions than for one, which
/// sequences such as Sobol's do, and it takes out of the error all that is additive in the dimensions, here nearly all.
/// </remarks>
internal sealed class StratifiedDraws
{
    private readonly float[] _values;
    private readonly int _draws;

    /// <summary>Makes a block.</summary>
    /// <param name="draws">Draws in the block, 1 or more.</param>
    /// <param name="dimensions">Dimensions.</param>
    /// <param name="seed">The same seed gives the same block.</param>
    internal StratifiedDraws(int draws, int dimensions, int seed)
    {
        var random = new Random(seed);
        _draws = draws;
        _values = new float[draws * dimensions];
        var order = new int[draws];
        for (var dimension = 0; dimension < dimensions; dimension++)
        {
            for (var i = 0; i < draws; i++)
            {
                order[i] = i;
            }

            random.Shuffle(order);
            for (var i = 0; i < draws; i++)
            {
                _values[(dimension * draws) + i] = (float)NormalQuantile.Of((order[i] + (0.001 + (0.998 * random.NextDouble()))) / draws);
            }
        }
    }

    /// <summary>A standard normal value.</summary>
    internal double Normal(int draw, int dimension) => _values[(dimension * _draws) + draw];
}
