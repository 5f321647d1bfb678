namespace Duskwright.Proposals.Tiles;

/// <summary>How the tiles of a town plug into one another.</summary>
/// <param name="FreshOhms">One contact when new, Ω.</param>
/// <param name="WornOhms">One contact worn by many changes, Ω.</param>
/// <param name="AcrossMetres">Wire from one plug of a tile to another, one conductor, m.</param>
/// <param name="Symmetrical">Whether plus and minus find their like however a tile is turned: plus, minus, minus, plus, or a plug that goes in only one way.</param>
public sealed record TilePlugs(double FreshOhms, double WornOhms, double AcrossMetres, bool Symmetrical)
{
    /// <summary>A worn contact is taken as ten fresh ones where nothing is measured: common practice, no source.</summary>
    public const double WornOverFresh = 10;

    /// <summary>How many plugs a square tile has, one on each side.</summary>
    public const int Sides = 4;
}
