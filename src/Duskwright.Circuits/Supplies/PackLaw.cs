namespace Duskwright.Circuits.Supplies;

/// <summary>Equal cells in rows, rows side by side, and the holder's contacts.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Series">Cells in a row, 1 or more.</param>
/// <param name="Parallel">Rows, 1 or more.</param>
/// <param name="ExtraOhms">Resistance of contacts and holder, Ω.</param>
public sealed record PackLaw(CellLaw Cell, int Series, int Parallel, double ExtraOhms)
{
    /// <summary>Voltage with nothing connected.</summary>
    /// <param name="state">The wells of each cell.</param>
    /// <returns>V.</returns>
    public double OpenVolts(CellState state) => Series * Cell.At(state).OpenVolts;

    /// <summary>Resistance between its ends.</summary>
    /// <param name="state">The wells of each cell.</param>
    /// <returns>Ω.</returns>
    public double Ohms(CellState state) => (Series * Cell.At(state).Ohms / Parallel) + ExtraOhms;
}
