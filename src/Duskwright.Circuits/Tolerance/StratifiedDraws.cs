using System.Numerics;

namespace Duskwright.Circuits.Tolerance;

/// <summary>A block of draws that is spread evenly along every dimension.</summary>
/// <remarks>
/// Latin hypercube sampling: each dimension is cut into as many strips as there are draws, each strip is hit once, in an order of its own
/// (McKay, Beckman and Conover, Technometrics 21 (1979) 239). It needs no more draws for a thousand dimensions than for one, which
/// sequences such as Sobol's do, and it takes out of the error all that is additive in the dimensions, here nearly all.
/// </remarks>
internal sealed class StratifiedDraws
{
    // By group of draws that are solved side by side, then by dimension, then by draw of the group; the last group is filled up with nothing.
    private readonly double[] _values;
    private readonly int _dimensions;

    /// <summary>Makes a block.</summary>
    /// <param name="draws">Draws in the block, 1 or more.</param>
    /// <param name="dimensions">Dimensions.</param>
    /// <param name="seed">The same seed gives the same block.</param>
    internal StratifiedDraws(int draws, int dimensions, ulong seed)
    {
        var lanes = Vector<double>.Count;
        var chance = new SplitMix(seed);
        _dimensions = dimensions;
        _values = new double[(draws + lanes - 1) / lanes * lanes * dimensions];
        var strips = new double[(draws + lanes - 1) / lanes * lanes];
        Array.Fill(strips, 0.5);
        var slots = new int[draws];
        for (var i = 0; i < draws; i++)
        {
            slots[i] = (i / lanes * lanes * dimensions) + (i % lanes);
        }

        for (var dimension = 0; dimension < dimensions; dimension++)
        {
            for (var i = draws - 1; i >= 0; i--)
            {
                // The upper half of the bits says where in its strip a draw lies, the lower half with which draw it changes places.
                var bits = chance.Next();
                var other = (int)((bits & uint.MaxValue) * (ulong)(i + 1) >> 32);
                (slots[i], slots[other]) = (slots[other], slots[i]);
                strips[i] = (i + 0.001 + (0.998 * (bits >> 32) / (1UL << 32))) / draws;
            }

            for (var i = 0; i < strips.Length; i += lanes)
            {
                NormalQuantile.Of(new Vector<double>(strips, i)).CopyTo(strips, i);
            }

            for (var i = 0; i < draws; i++)
            {
                _values[slots[i] + (dimension * lanes)] = strips[i];
            }

            Array.Fill(strips, 0.5, draws, strips.Length - draws);
        }
    }

    /// <summary>A standard normal value.</summary>
    internal double Normal(int draw, int dimension) => _values[(((draw / Vector<double>.Count * _dimensions) + dimension) * Vector<double>.Count) + (draw % Vector<double>.Count)];

    /// <summary>Standard normal values of the draws that are solved side by side.</summary>
    /// <param name="group">Their place among the groups, 0 for the first draws.</param>
    /// <param name="dimension">The dimension.</param>
    internal Vector<double> Normals(int group, int dimension) => new(_values, ((group * _dimensions) + dimension) * Vector<double>.Count);
}
