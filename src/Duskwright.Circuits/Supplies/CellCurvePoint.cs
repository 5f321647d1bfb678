namespace Duskwright.Circuits.Supplies;

/// <summary>One point of a cell's curve.</summary>
/// <param name="Left">Share left in the available well.</param>
/// <param name="OpenVolts">Open-circuit voltage, V.</param>
/// <param name="Ohms">Steady (polarisation) resistance, Ω.</param>
public readonly record struct CellCurvePoint(double Left, double OpenVolts, double Ohms);
