using Duskwright.Plan;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Results;

/// <summary>What parts as they are sold make of one pack: no two lamps, resistors or cells of a bag are alike.</summary>
/// <remarks>Each figure's value is the middle of all circuits drawn; nine in ten lie within its range.</remarks>
public sealed record SpreadResult
{
    /// <summary>The id of the supply.</summary>
    public required string Supply { get; init; }

    /// <summary>Its current with all on, A: what the meter at the bank may read though all is well.</summary>
    public required Figure Load { get; init; }

    /// <summary>Hours until its worst lamp is dim or its cells are at their end; none where it does not run down.</summary>
    public Figure? Hours { get; init; }

    /// <summary>Evenness by kind of lamp; kinds of which it feeds only one are left out.</summary>
    public required ItemList<KindSpread> Kinds { get; init; }

    /// <summary>The steady lamp that flickering neighbours disturb most; none where none flickers or all do.</summary>
    public DisturbedNeighbour? Disturbed { get; init; }
}

/// <summary>How even the lamps of one kind on a pack turn out.</summary>
/// <param name="Lamp">The kind.</param>
/// <param name="Lamps">How many.</param>
/// <param name="PairDiffers">Probability that a lamp and the next differ visibly, as a share.</param>
/// <param name="AnyDiffers">Probability that some lamp is visibly darker than the brightest, as a share.</param>
/// <param name="Greediest">Current of the lamp that takes most over the mean of all: 1 is perfect; from 2 on it takes the others' share.</param>
/// <param name="Overloaded">Probability that some lamp takes more than it may for long, as a share; none where that is not known.</param>
public sealed record KindSpread(string Lamp, int Lamps, Figure PairDiffers, Figure AnyDiffers, Figure Greediest, Figure? Overloaded);

/// <summary>A lamp that wavers with its flickering neighbours, through the resistance they share.</summary>
/// <param name="Building">Key of its building.</param>
/// <param name="Lamp">Its name.</param>
/// <param name="Step">Difference of its lightness between all of them dark and all lit, L*; above 5 it is seen.</param>
public sealed record DisturbedNeighbour(string Building, string Lamp, Figure Step);
