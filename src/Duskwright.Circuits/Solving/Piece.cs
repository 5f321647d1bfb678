namespace Duskwright.Circuits.Solving;

/// <summary>What an edge stands for while a network is taken apart.</summary>
internal enum PieceKind : byte
{
    /// <summary>An element of the network.</summary>
    Element,

    /// <summary>Two pieces one after the other.</summary>
    Series,

    /// <summary>Chains side by side.</summary>
    Port,
}

/// <summary>A piece and the way it points.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Index">Its place among those of its kind.</param>
/// <param name="Flipped">Whether it points against the way it is read.</param>
internal readonly record struct Piece(PieceKind Kind, int Index, bool Flipped)
{
    /// <summary>The same piece read from its other end.</summary>
    internal Piece Turned => this with { Flipped = !Flipped };
}

/// <summary>Two pieces one after the other.</summary>
/// <param name="First">The first.</param>
/// <param name="Node">The node between.</param>
/// <param name="Second">The second.</param>
internal readonly record struct SeriesPiece(Piece First, int Node, Piece Second);
