namespace Duskwright.Circuits.Supplies;

/// <summary>How full a cell's two wells are.</summary>
/// <param name="AvailableCoulombs">What is at once available, C.</param>
/// <param name="BoundCoulombs">What follows, C.</param>
public readonly record struct CellState(double AvailableCoulombs, double BoundCoulombs)
{
    /// <summary>A rested cell with a share of its charge left.</summary>
    /// <param name="law">The cell.</param>
    /// <param name="chargeLeftShare">0 to 1.</param>
    /// <returns>The wells, level with one another.</returns>
    public static CellState At(CellLaw law, double chargeLeftShare)
    {
        var left = law.ChargeCoulombs * chargeLeftShare;
        return new CellState(left * law.AvailableShare, left * (1 - law.AvailableShare));
    }
}
