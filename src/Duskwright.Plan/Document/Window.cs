using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Document;

/// <summary>A window or glazed door in an outer wall.</summary>
public sealed record Window
{
    private const double UsualSillMillimetres = 8;

    /// <summary>The wall it is in.</summary>
    public WallSide Wall { get; init; }

    /// <summary>From the wall's left end, seen from outside, to the window's left edge.</summary>
    public Length? FromLeft { get; init; }

    /// <summary>From the storey's floor to the window's lower edge.</summary>
    public Length? Sill { get; init; }

    /// <summary>Width of the opening.</summary>
    public required Length Width { get; init; }

    /// <summary>Height of the opening.</summary>
    public required Length Height { get; init; }

    /// <summary>What it is glazed with; clear sheet where nothing is said.</summary>
    public Pane? Pane { get; init; }

    /// <summary>Where its lower edge lies: as said, else 8 mm above the floor, or in the middle of a storey too low for that.</summary>
    /// <param name="storeyMillimetres">Height of its storey, mm.</param>
    /// <returns>Above the floor, mm.</returns>
    public double SillMillimetres(double storeyMillimetres) => Sill?.Millimetres ?? Math.Clamp((storeyMillimetres - Height.Millimetres) / 2, 0, UsualSillMillimetres);
}

/// <summary>The walls of a building, named as one stands before its front.</summary>
public enum WallSide
{
    /// <summary>The front.</summary>
    Front,

    /// <summary>The wall to the right of the front.</summary>
    Right,

    /// <summary>The back.</summary>
    Back,

    /// <summary>The wall to the left of the front.</summary>
    Left,
}
