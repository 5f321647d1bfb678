using System.Collections.Immutable;

namespace Duskwright.Harness.Trunks;

/// <summary>Buildings to be wired in trees from the bank, a tree a pack, none loaded above what a pack may give.</summary>
/// <param name="Metres">Length of a piece between any two places, symmetrical; place 0 is the bank. It need not keep the triangle inequality.</param>
/// <param name="Load">What each place takes, whole units; 0 for the bank.</param>
/// <param name="Capacity">What hangs on one pack at most.</param>
public sealed record PackTreeProblem(ImmutableArray<ImmutableArray<double>> Metres, ImmutableArray<int> Load, int Capacity);

/// <summary>Trees found.</summary>
/// <param name="Pieces">The pieces, each between two places.</param>
/// <param name="Metres">Their length.</param>
/// <param name="AtLeastMetres">What no such trees are shorter than.</param>
public sealed record PackTreeAnswer(ImmutableArray<(int From, int To)> Pieces, double Metres, double AtLeastMetres)
{
    /// <summary>How much shorter the best possible could be, as a share.</summary>
    public double Gap => Metres == 0 ? 0 : 1 - (AtLeastMetres / Metres);
}

/// <summary>How long the search goes, never by the clock.</summary>
/// <param name="Moves">Moves tried by the annealing in all.</param>
/// <param name="Starts">Over how many starts they are spread.</param>
/// <param name="BoundRounds">How many times cuts are added for the bound.</param>
/// <param name="Seed">Seed of the moves.</param>
/// <param name="DeterministicSeconds">Limit of the solver that puts the groups seen together.</param>
public sealed record PackTreeSettings(int Moves = 2_000_000, int Starts = 4, int BoundRounds = 60, int Seed = 7, double DeterministicSeconds = 5);
