namespace Duskwright.Circuits.Wires;

/// <summary>What a short circuit in the wiring does, for every resistance the short itself may have.</summary>
public static class ShortCircuit
{
    private const double LeastShortOhms = 0.01;
    private const double MostShortOhms = 100;
    private const int Tried = 81;

    /// <summary>The worst short: the one that keeps the wire hottest without the fuse opening, and the one that makes most heat in itself.</summary>
    /// <param name="openVolts">Open voltage of the pack, V.</param>
    /// <param name="sourceOhms">Its resistance, Ω.</param>
    /// <param name="pathOhms">Resistance of switch, wires and joints to the short and back, Ω.</param>
    /// <param name="copperDiameterMetres">Diameter of the thinnest copper on the way, m.</param>
    /// <param name="ambientCelsius">Temperature of the room, °C.</param>
    /// <param name="fuse">The fuse at the pack; none where there is none.</param>
    /// <returns>The verdict. A current above the fuse's trip current is taken as opened, one below as lasting for ever.</returns>
    public static ShortVerdict Worst(
        double openVolts, double sourceOhms, double pathOhms, double copperDiameterMetres, double ambientCelsius, FuseLaw? fuse)
    {
        var fixedOhms = sourceOhms + pathOhms + (fuse?.Ohms ?? 0);
        var opens = fuse is not null && openVolts / fixedOhms > fuse.TripAmps;
        var (worstOhms, worstAmps, hotSpot) = (MostShortOhms, openVolts / (fixedOhms + MostShortOhms), 0.0);
        for (var i = 0; i < Tried; i++)
        {
            var shortOhms = LeastShortOhms * Math.Pow(MostShortOhms / LeastShortOhms, i / (Tried - 1.0));
            var amps = openVolts / (fixedOhms + shortOhms);
            if (fuse is not null && amps > fuse.TripAmps)
            {
                continue;
            }

            if (amps > worstAmps)
            {
                (worstOhms, worstAmps) = (shortOhms, amps);
            }

            hotSpot = Math.Max(hotSpot, amps * amps * shortOhms);
        }

        return new ShortVerdict(worstOhms, worstAmps, WireHeat.SteadyCelsius(worstAmps, copperDiameterMetres, ambientCelsius), hotSpot, opens);
    }
}

/// <summary>A fuse.</summary>
/// <param name="HoldAmps">The current it carries for ever, A.</param>
/// <param name="TripAmps">The current at which it is sure to open, A.</param>
/// <param name="Ohms">Its resistance, Ω.</param>
public sealed record FuseLaw(double HoldAmps, double TripAmps, double Ohms);

/// <summary>What the worst short does.</summary>
/// <param name="ShortOhms">Resistance of the short that heats the wire most, Ω.</param>
/// <param name="Amps">Its current, A.</param>
/// <param name="WireCelsius">The temperature the wire settles at, °C.</param>
/// <param name="HotSpotWatts">The most heat that a short makes in itself without the fuse opening, W.</param>
/// <param name="FuseOpens">Whether a dead short is above the fuse's trip current.</param>
public sealed record ShortVerdict(double ShortOhms, double Amps, double WireCelsius, double HotSpotWatts, bool FuseOpens);
