using Duskwright.Plan;
using Duskwright.Plan.Edits;

namespace Duskwright.Proposals.Growth;

/// <summary>What the pair of a building that is added later begins at.</summary>
public enum TieInKind
{
    /// <summary>The bank: a pair of its own.</summary>
    Bank,

    /// <summary>A tap under the board that stands already.</summary>
    Tap,

    /// <summary>A new tap in a shared pair.</summary>
    NewTap,

    /// <summary>Another building, from which it goes on.</summary>
    House,

    /// <summary>The bank, where a pack is added for it.</summary>
    NewPack,
}

/// <summary>One place to tie a new building in.</summary>
/// <param name="Kind">What its pair begins at.</param>
/// <param name="Words">The same in words: "On from Chandlery, switch A".</param>
/// <param name="Supply">The pack it would take from.</param>
/// <param name="WireMetres">Wire to cut for it, both conductors, m; what the pair that is cut needs more for its joints is in it.</param>
/// <param name="Joints">Joints to be made, on both conductors.</param>
/// <param name="Edit">The edit that does it.</param>
public sealed record TieInOption(TieInKind Kind, string Words, string Supply, double WireMetres, int Joints, TieIn Edit)
{
    /// <summary>Why it cannot be built so, a sentence each; none where hands, holes and wireways allow it.</summary>
    public ItemList<string> Against { get; init; } = [];
}
