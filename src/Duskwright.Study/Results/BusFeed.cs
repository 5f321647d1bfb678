using Duskwright.Plan;

namespace Duskwright.Study.Results;

/// <summary>A piece of a pair that several buildings share: a plug and the wire behind it.</summary>
/// <param name="From">The junction nearer the supply; 0 is the socket at the supply.</param>
/// <param name="To">The junction it feeds, from 1.</param>
/// <param name="ConductorOhms">One conductor, Ω.</param>
public sealed record BusPiece(int From, int To, double ConductorOhms);

/// <summary>Buildings fed by such a pair, all switches on and the supply as full as it is said to be.</summary>
/// <param name="Amps">The current at the socket, A.</param>
/// <param name="SocketVolts">The volts there.</param>
/// <param name="Buildings">The buildings plugged in, in the order of the document.</param>
public sealed record BusResult(double Amps, double SocketVolts, ItemList<BusBuilding> Buildings);

/// <summary>A building on such a pair.</summary>
/// <param name="Building">Its key.</param>
/// <param name="Volts">The volts at its junction.</param>
/// <param name="Amps">Its current, A.</param>
/// <param name="Light">The light of each of its lamps on this supply, where 1 is the light at the lamp's reference current.</param>
public sealed record BusBuilding(string Building, double Volts, double Amps, ItemList<double> Light)
{
    /// <summary>A share of a lamp's light as lightness L*, where all of it is 100.</summary>
    /// <param name="lightShare">The share; above 1 counts as 1.</param>
    /// <returns>The lightness, 0 to 100.</returns>
    public static double Lightness(double lightShare) => Duskwright.Light.Perception.Lightness.OfShare(Math.Clamp(lightShare, 0, 1));
}
