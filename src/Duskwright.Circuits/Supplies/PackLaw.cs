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

    /// <summary>What it is with one flat cell, which has the last point of its curve for voltage and resistance.</summary>
    /// <param name="state">The wells of each good cell.</param>
    /// <returns>Voltage with nothing connected, V, and resistance, Ω: rows side by side are one source by Millman's theorem.</returns>
    public (double OpenVolts, double Ohms) WithFlatCell(CellState state)
    {
        var (goodVolts, goodOhms) = Cell.At(state);
        var flat = Cell.Curve[^1];
        var (rowVolts, rowOhms) = (Series * goodVolts, Series * goodOhms);
        var (weakVolts, weakOhms) = (rowVolts - goodVolts + flat.OpenVolts, rowOhms - goodOhms + flat.Ohms);
        var siemens = ((Parallel - 1) / rowOhms) + (1 / weakOhms);
        var volts = (((Parallel - 1) * rowVolts / rowOhms) + (weakVolts / weakOhms)) / siemens;
        return (volts, (1 / siemens) + ExtraOhms);
    }
}
