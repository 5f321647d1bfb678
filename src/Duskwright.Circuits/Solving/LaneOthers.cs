using System.Numerics;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Solving;

/// <summary>The parts of several networks of one structure that are neither wire nor plain LED; lamps among them are straightened lane by lane.</summary>
internal sealed class LaneOthers(PortPlan plan)
{
    private readonly (int Element, int Port)[] _parts = plan.Others;
    private readonly Vector<double>[] _volts = new Vector<double>[plan.Others.Length];
    private readonly Vector<double>[] _amps = new Vector<double>[plan.Others.Length];
    private readonly Vector<double>[] _siemens = new Vector<double>[plan.Others.Length];

    /// <summary>Straightens every part at the voltage of its port and adds conductance and current to it.</summary>
    internal void Straighten(Vector<double>[] portVolts, LaneValues values, Vector<double>[] portSiemens, Vector<double>[] portAmps)
    {
        for (var i = 0; i < _parts.Length; i++)
        {
            var (element, port) = _parts[i];
            _volts[i] = portVolts[port];
            (_amps[i], _siemens[i]) = At(values, element, _volts[i]);
            portSiemens[port] += _siemens[i];
            portAmps[port] += _amps[i] - (_siemens[i] * _volts[i]);
        }
    }

    /// <summary>Whether at new voltages no part can be told from the line it was straightened to.</summary>
    internal bool StraightAt(Vector<double>[] portVolts, LaneValues values)
    {
        for (var i = 0; i < _parts.Length; i++)
        {
            var (element, port) = _parts[i];
            var (amps, _) = At(values, element, portVolts[port]);
            var off = Vector.Abs(amps - _amps[i] - (_siemens[i] * (portVolts[port] - _volts[i])));
            var rounding = OtherParts.Rounding * _siemens[i] * Vector.Abs(values.OpenVolts[element]);
            if (!Vector.LessThanOrEqualAll(off, new Vector<double>(OtherParts.AllowedAmps) + rounding + (OtherParts.AllowedShare * Vector.Abs(amps))))
            {
                return false;
            }
        }

        return true;
    }

    private static (Vector<double> Amps, Vector<double> Siemens) At(LaneValues values, int element, Vector<double> voltsFromAToB)
    {
        if (Vector.GreaterThanAll(values.LimitAmps[element], Vector<double>.Zero))
        {
            return ElementLaw.Source(values.OpenVolts[element], values.Ohms[element], values.LimitAmps[element], voltsFromAToB);
        }

        var (amps, siemens) = (Vector<double>.Zero, Vector<double>.Zero);
        for (var lane = 0; lane < LaneValues.Lanes; lane++)
        {
            var (laneAmps, laneSiemens) = ElementLaw.At(
                values.Law(element, lane), values.Signs[element][lane], values.Ohms[element][lane], values.OpenVolts[element][lane], values.LimitAmps[element][lane], voltsFromAToB[lane]);
            (amps, siemens) = (amps.WithElement(lane, laneAmps), siemens.WithElement(lane, laneSiemens));
        }

        return (amps, siemens);
    }
}
