using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Solving;

/// <summary>The parts of a network that are neither wire nor plain LED: supplies, filament and flickering lamps, each a port of its own.</summary>
internal sealed class OtherParts(PortPlan plan)
{
    internal const double AllowedAmps = 1e-11;
    internal const double AllowedShare = 1e-10;
    internal const double Rounding = 1e-15;

    private readonly (int Element, int Port)[] _parts = plan.Others;
    private readonly double[] _volts = new double[plan.Others.Length];
    private readonly double[] _amps = new double[plan.Others.Length];
    private readonly double[] _siemens = new double[plan.Others.Length];

    /// <summary>Straightens every part at the voltage of its port.</summary>
    internal void Straighten(double[] portVolts, NetworkValues values)
    {
        for (var i = 0; i < _parts.Length; i++)
        {
            _volts[i] = portVolts[_parts[i].Port];
            (_amps[i], _siemens[i]) = ElementLaw.At(values, _parts[i].Element, _volts[i]);
        }
    }

    /// <summary>Adds conductance and current of every part to its port.</summary>
    internal void AddTo(double[] portSiemens, double[] portAmps)
    {
        for (var i = 0; i < _parts.Length; i++)
        {
            var port = _parts[i].Port;
            portSiemens[port] += _siemens[i];
            portAmps[port] += _amps[i] - (_siemens[i] * _volts[i]);
        }
    }

    /// <summary>Whether at new voltages no part can be told from the line it was straightened to.</summary>
    internal bool StraightAt(double[] portVolts, NetworkValues values)
    {
        for (var i = 0; i < _parts.Length; i++)
        {
            var volts = portVolts[_parts[i].Port];
            var (amps, _) = ElementLaw.At(values, _parts[i].Element, volts);
            var off = Math.Abs(amps - _amps[i] - (_siemens[i] * (volts - _volts[i])));

            // What the last digits of the voltage make in the current of a stout supply is no fault of the line.
            var rounding = Rounding * _siemens[i] * Math.Abs(values.OpenVolts[_parts[i].Element]);
            if (!(off <= AllowedAmps + rounding + (AllowedShare * Math.Abs(amps))))
            {
                return false;
            }
        }

        return true;
    }
}
