using System.Collections.Immutable;

namespace Duskwright.Circuits.Supplies;

/// <summary>A cell as a store of two wells: what is at once available, and what follows (Manwell and McGowan, Solar Energy 50 (1993) 399–405).</summary>
/// <param name="ChargeCoulombs">All charge of a fresh cell, C, more than zero.</param>
/// <param name="AvailableShare">c, share of it in the available well, above 0 to 1.</param>
/// <param name="FollowPerSecond">k′, rate at which the wells level out, 1/s, more than zero.</param>
/// <param name="Curve">Open-circuit voltage and resistance against the share left in the available well, fullest first, at least two points.</param>
/// <param name="EndVolts">Voltage at which the cell counts as flat, V.</param>
/// <remarks>Voltage follows the available well and the resistance its depth, so rate loss is counted once.</remarks>
public sealed record CellLaw(
    double ChargeCoulombs, double AvailableShare, double FollowPerSecond, ImmutableArray<CellCurvePoint> Curve, double EndVolts)
{
    private const double ZeroCelsius = 273.15;
    private const double RoomCelsius = 20;
    private const double LeastCelsius = -20;
    private const double MostCelsius = 55;

    // ln(0.15/0.10) over 1/293.15 K − 1/313.15 K.
    private const double ArrheniusKelvin = 1861;

    /// <summary>All charge of a fresh cell, C.</summary>
    public double ChargeCoulombs { get; init; } = ChargeCoulombs > 0
        ? ChargeCoulombs
        : throw new ArgumentOutOfRangeException(nameof(ChargeCoulombs), ChargeCoulombs, "A cell's charge is more than 0 C.");

    /// <summary>c, share of the charge in the available well.</summary>
    public double AvailableShare { get; init; } = AvailableShare is > 0 and <= 1
        ? AvailableShare
        : throw new ArgumentOutOfRangeException(nameof(AvailableShare), AvailableShare, "The available share lies above 0 and not above 1.");

    /// <summary>k′, rate at which the wells level out, 1/s.</summary>
    public double FollowPerSecond { get; init; } = FollowPerSecond > 0
        ? FollowPerSecond
        : throw new ArgumentOutOfRangeException(nameof(FollowPerSecond), FollowPerSecond, "The wells level out at more than 0 per second.");

    /// <summary>Open-circuit voltage and resistance against the share left in the available well, fullest first.</summary>
    public ImmutableArray<CellCurvePoint> Curve { get; init; } = Falls(Curve)
        ? Curve
        : throw new ArgumentException("A cell's curve has two points or more, and what is left falls from each to the next.", nameof(Curve));

    /// <summary>Whether charge that is driven back into it is stored; in a primary cell it is lost as heat and gas.</summary>
    public bool Rechargeable { get; init; } = true;

    /// <summary>Share of all charge that is left.</summary>
    /// <param name="state">The wells.</param>
    /// <returns>0 to 1.</returns>
    public double Left(CellState state) => (state.AvailableCoulombs + state.BoundCoulombs) / ChargeCoulombs;

    /// <summary>Share of the available well that is left.</summary>
    /// <param name="state">The wells.</param>
    /// <returns>0 to 1.</returns>
    public double AvailableLeft(CellState state) => state.AvailableCoulombs / (AvailableShare * ChargeCoulombs);

    /// <summary>Open-circuit voltage and resistance at a state.</summary>
    /// <param name="state">The wells.</param>
    /// <returns>V and Ω of one cell, straight between the points of the curve.</returns>
    public (double OpenVolts, double Ohms) At(CellState state)
    {
        var left = AvailableLeft(state);
        var i = 1;
        while (i < Curve.Length - 1 && left < Curve[i].Left)
        {
            i++;
        }

        var (full, empty) = (Curve[i - 1], Curve[i]);
        var along = Math.Clamp((left - empty.Left) / (full.Left - empty.Left), 0, 1);
        return (empty.OpenVolts + (along * (full.OpenVolts - empty.OpenVolts)), empty.Ohms + (along * (full.Ohms - empty.Ohms)));
    }

    /// <summary>The wells after a steady current has flowed for a time; a current of zero is a rest.</summary>
    /// <param name="state">The wells before.</param>
    /// <param name="amps">Current drawn from one cell, A; negative charges it if it is rechargeable.</param>
    /// <param name="seconds">Time, s.</param>
    /// <returns>The wells after, neither below empty nor above full.</returns>
    public CellState Advance(CellState state, double amps, double seconds)
    {
        amps = Rechargeable ? amps : Math.Max(amps, 0);

        // Closed form of the two-well model, Manwell and McGowan (1993), equations 6 and 7.
        var all = state.AvailableCoulombs + state.BoundCoulombs;
        var k = FollowPerSecond;
        var stay = Math.Exp(-k * seconds);
        var level = 1 - stay;
        var lag = (k * seconds) - level;
        var available = (state.AvailableCoulombs * stay) + (((all * k * AvailableShare) - amps) * level / k) - (amps * AvailableShare * lag / k);
        var left = Math.Clamp(all - (amps * seconds), 0, ChargeCoulombs);
        available = Math.Clamp(available, 0, Math.Min(left, AvailableShare * ChargeCoulombs));
        return new CellState(available, left - available);
    }

    /// <summary>The same cell at another temperature than 20 °C.</summary>
    /// <param name="celsius">Temperature of the cell, −20 to 55 °C.</param>
    /// <returns>The cell with its resistance, and the rate at which the bound charge follows, as they are then.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside what cells are made for.</exception>
    /// <remarks>
    /// Both go with exp(B/T) (Arrhenius): the follow-up and most of the resistance are diffusion of the same ions. B from 0.15 Ω at 20 °C
    /// and 0.10 Ω at 40 °C of a fresh LR6 (tests/Reference/battery-internal-resistance.csv); other kinds are taken alike.
    /// −20 to 55 °C is the usual range of alkaline cells, from memory.
    /// </remarks>
    public CellLaw AtCelsius(double celsius)
    {
        if (celsius is not (>= LeastCelsius and <= MostCelsius))
        {
            throw new ArgumentOutOfRangeException(nameof(celsius), celsius, "Cells are made for -20 to 55 °C.");
        }

        var slower = Math.Exp(ArrheniusKelvin * ((1 / (celsius + ZeroCelsius)) - (1 / (RoomCelsius + ZeroCelsius))));
        return this with { FollowPerSecond = FollowPerSecond / slower, Curve = [.. Curve.Select(p => p with { Ohms = p.Ohms * slower })] };
    }

    private static bool Falls(ImmutableArray<CellCurvePoint> curve) =>
        curve.Length >= 2 && curve.Zip(curve.Skip(1)).All(pair => pair.First.Left > pair.Second.Left);
}
