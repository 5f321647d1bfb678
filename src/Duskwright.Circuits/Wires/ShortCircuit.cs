namespace Duskwright.Circuits.Wires;

/// <summary>What a short circuit in the wiring does, over every resistance that the short itself may have: 0.01 to 100 Ω.</summary>
public static class ShortCircuit
{
    private const double LeastShortOhms = 0.01;
    private const double MostShortOhms = 100;

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

        // Current falls as the short's own resistance rises, so the least resistance that the fuse bears heats the wire most.
        var leastBorne = fuse is null ? LeastShortOhms : Math.Clamp((openVolts / fuse.TripAmps) - fixedOhms, LeastShortOhms, MostShortOhms);
        var worstAmps = openVolts / (fixedOhms + leastBorne);

        // The heat in the short, V²·R/(F + R)², is greatest at R = F, where it matches the rest of the circuit (maximum power transfer).
        var hottestOhms = Math.Clamp(fixedOhms, leastBorne, MostShortOhms);
        var hottestAmps = openVolts / (fixedOhms + hottestOhms);
        return new ShortVerdict(
            leastBorne,
            worstAmps,
            WireHeat.SteadyCelsius(worstAmps, copperDiameterMetres, ambientCelsius),
            hottestAmps * hottestAmps * hottestOhms,
            opens);
    }
}
