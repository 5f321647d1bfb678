namespace Duskwright.Circuits.Lamps;

/// <summary>The voltage that a resistor leaves to a lamp whose own current is known only as a rising function of its voltage.</summary>
internal static class SeriesBranch
{
    /// <summary>Solves v + R·i(v) = V for v by Newton kept within a bracket.</summary>
    internal static (double Volts, double Amps, double Siemens) Solve(
        double branchVolts, double resistorOhms, Func<double, (double Amps, double Siemens)> lamp)
    {
        if (resistorOhms == 0)
        {
            var (amps, siemens) = lamp(branchVolts);
            return (branchVolts, amps, siemens);
        }

        var (low, high) = branchVolts >= 0 ? (0.0, branchVolts) : (branchVolts, 0.0);
        var volts = high;
        for (var turn = 0; turn < 200; turn++)
        {
            var (amps, siemens) = lamp(volts);
            var excess = volts + (resistorOhms * amps) - branchVolts;
            if (excess > 0)
            {
                high = volts;
            }
            else
            {
                low = volts;
            }

            var next = volts - (excess / (1 + (resistorOhms * siemens)));
            if (!(next > low && next < high))
            {
                next = 0.5 * (low + high);
            }

            if (Math.Abs(next - volts) <= 1e-15 * Math.Max(1, Math.Abs(branchVolts)))
            {
                break;
            }

            volts = next;
        }

        var (lampAmps, lampSiemens) = lamp(volts);
        return (volts, lampAmps, lampSiemens / (1 + (resistorOhms * lampSiemens)));
    }
}
