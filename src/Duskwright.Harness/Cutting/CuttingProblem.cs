using System.Collections.Immutable;

namespace Duskwright.Harness.Cutting;

/// <summary>Leads of one wire to be cut from reels.</summary>
/// <param name="LeadsMillimetres">The length of each conductor, mm, above 0.</param>
/// <param name="OnHandMillimetres">What is left on each reel that is on hand, mm.</param>
/// <param name="NewMillimetres">What a new reel holds, mm; as many can be bought as are needed.</param>
public sealed record CuttingProblem(ImmutableArray<int> LeadsMillimetres, ImmutableArray<int> OnHandMillimetres, int NewMillimetres);

/// <summary>A plan of cutting: the fewest new reels, and then the least length of reels on hand begun.</summary>
/// <param name="Reels">Each reel that is cut from: those on hand first, then the new ones.</param>
/// <param name="TooLong">Indices of leads that no reel holds in one piece; they are cut from none.</param>
/// <param name="NewReels">How many new reels it takes.</param>
/// <param name="NewAtLeast">How many any plan takes.</param>
/// <param name="BegunMillimetres">Length on the reels on hand that are begun, mm.</param>
/// <param name="BegunAtLeast">What any plan with so few new reels begins of them, mm.</param>
public sealed record CuttingPlan(
    ImmutableArray<CutReel> Reels, ImmutableArray<int> TooLong, int NewReels, int NewAtLeast, long BegunMillimetres, long BegunAtLeast)
{
    /// <summary>Whether no plan takes fewer new reels, nor begins less with as few.</summary>
    public bool Proven => NewReels == NewAtLeast && BegunMillimetres == BegunAtLeast;
}

/// <summary>A reel and what is cut from it.</summary>
/// <param name="OnHand">Index of the reel on hand; none for a new one.</param>
/// <param name="Millimetres">What it holds before the first cut, mm.</param>
/// <param name="Leads">Indices of the leads, in their order.</param>
/// <param name="LeftMillimetres">What is left of it, mm.</param>
public sealed record CutReel(int? OnHand, int Millimetres, ImmutableArray<int> Leads, int LeftMillimetres);
