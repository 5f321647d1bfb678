namespace Duskwright.Circuits.Lamps;

/// <summary>The voltage that a resistor leaves to a lamp whose own current is known only as a rising function of its voltage.</summary>
internal static class SeriesBranch
{
    private const int MostTurns = 200;

    // Two units in the last place of the larger of a volt and the branch's voltage.
    private const double LastPlace = 4.4e-16;

    /// <summary>Solves v + R·i(v) = V for v by Newton, halving the bracket instead wherever Newton leaves it or does not halve its own step.</summary>
    /// <remarks>Press and others, Numerical Recipes, 3rd edition, section 9.4 (the safeguard, from memory).</remarks>
    internal static (double Volts, double Amps, double Siemens) Solve(
        double branchVolts, double resistorOhms, Func<double, (double Amps, double Siemens)> lamp)
    {
        var (volts, low, high) = (branchVolts, Math.Min(branchVolts, 0), Math.Max(branchVolts, 0));
        var (amps, siemens) = lamp(volts);
        var lastStep = high - low;
        for (var turn = 0; turn < MostTurns && resistorOhms > 0; turn++)
        {
            var excess = volts + (resistorOhms * amps) - branchVolts;
            (low, high) = excess > 0 ? (low, volts) : (volts, high);
            var step = excess / (1 + (resistorOhms * siemens));
            if (Math.Abs(step) <= LastPlace * Math.Max(1, Math.Abs(branchVolts)))
            {
                break;
            }

            var next = volts - step;
            if (!(next > low && next < high) || Math.Abs(step) > 0.5 * lastStep)
            {
                next = 0.5 * (low + high);
            }

            if (next == low || next == high)
            {
                break;
            }

            lastStep = Math.Abs(next - volts);
            volts = next;
            (amps, siemens) = lamp(volts);
        }

        return (volts, amps, siemens / (1 + (resistorOhms * siemens)));
    }
}
