using System.Numerics;
using System.Runtime.InteropServices;
using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Solving;

/// <summary>All LEDs of a network, each with every resistance in its chain, evaluated side by side in the vector unit.</summary>
/// <remarks>
/// A chain at u volts with r ohms of wire before an LED branch that leaks G_l beside itself: with s = 1/(1 + r·G_l) the branch sees
/// s·(u − r·I), so I follows from w + ln w = a + b·u as in <see cref="LedLaw"/>, with a = ln(I_ref·ρ/n·V_T) + (R·I_ref − V_ref)/(n·V_T),
/// b = s/(n·V_T), ρ = R + own resistor + s·r; the chain carries c·w + l·u with c = s·n·V_T/ρ, l = s·G_l, and its slope is b·c·w/(1 + w) + l.
/// A plain resistance in an LED's place has b = c = 0. Arrays are by chain, filled up to whole vectors.
/// </remarks>
internal sealed class LedBank
{
    // How far a straightened lamp may be off its curve: ten picoamperes and a part in 10¹⁰.
    private const double AllowedAmps = 1e-11;
    private const double AllowedShare = 1e-10;

    // While w changes by a twentieth at most, the curvature stays within 1.25 of its first value; half of that is the remainder's factor.
    private const double NearShare = 0.05;
    private const double RemainderFactor = 0.625;

    private readonly PortPlan _plan;
    private readonly int _count;
    private readonly double[] _a;
    private readonly double[] _b;
    private readonly double[] _c;
    private readonly double[] _l;
    private readonly double[] _w;
    private readonly double[] _z;
    private readonly double[] _volts;
    private readonly double[] _next;
    private readonly double[] _amps;
    private readonly double[] _siemens;
    private bool _near;

    internal LedBank(PortPlan plan)
    {
        _plan = plan;
        _count = plan.LedChains;
        var lanes = Vector<double>.Count;
        var room = (_count + lanes - 1) / lanes * lanes;
        _a = new double[room];
        _b = new double[room];
        _c = new double[room];
        _l = new double[room];
        _w = new double[room];
        _z = new double[room];
        _volts = new double[room];
        _next = new double[room];
        _amps = new double[room];
        _siemens = new double[room];
    }

    /// <summary>Takes the numbers of one chain.</summary>
    /// <param name="chain">The chain.</param>
    /// <param name="values">The numbers.</param>
    /// <param name="wireOhms">Resistance of the resistors in it, Ω.</param>
    internal void Load(int chain, NetworkValues values, double wireOhms)
    {
        var element = _plan.LedElement[chain];
        var ownOhms = values.Ohms[element];
        if (values.Laws[element] is not LedLaw law)
        {
            (_a[chain], _b[chain], _c[chain], _l[chain]) = (0, 0, 0, 1 / (wireOhms + ownOhms));
            return;
        }

        var sign = values.Turned[element] ? -_plan.ElementSign[element] : _plan.ElementSign[element];
        var thermalVolts = law.Ideality * LedLaw.BoltzmannOverCharge * law.TemperatureKelvin;
        var share = 1 / (1 + (wireOhms * LampLaw.LeakSiemens));
        var ohms = Math.Max(law.SeriesOhms + ownOhms + (share * wireOhms), LedLaw.LeastOhms);
        _a[chain] = Math.Log(law.RefAmps * ohms / thermalVolts) + (((law.SeriesOhms * law.RefAmps) - law.RefVolts) / thermalVolts);
        _b[chain] = sign * share / thermalVolts;
        _c[chain] = sign * share * thermalVolts / ohms;
        _l[chain] = share * LampLaw.LeakSiemens;
    }

    /// <summary>Sets every LED dark, at no voltage.</summary>
    internal void Dark()
    {
        _near = false;
        Array.Clear(_volts);
        Array.Clear(_amps);
        Array.Copy(_l, _siemens, _l.Length);
    }

    /// <summary>Straightens every LED at the voltages of its port.</summary>
    internal void Straighten(double[] portVolts)
    {
        Gather(portVolts, _volts);
        var a = Lanes(_a);
        var b = Lanes(_b);
        var c = Lanes(_c);
        var l = Lanes(_l);
        var w = Lanes(_w);
        var z = Lanes(_z);
        var volts = Lanes(_volts);
        var amps = Lanes(_amps);
        var siemens = Lanes(_siemens);
        for (var i = 0; i < w.Length; i++)
        {
            var next = a[i] + (b[i] * volts[i]);
            w[i] = _near ? WrightOmega.Followed(w[i], z[i], next) : WrightOmega.Of(next);
            z[i] = next;
            var slope = (b[i] * c[i] * w[i] / (Vector<double>.One + w[i])) + l[i];
            siemens[i] = slope;
            amps[i] = (c[i] * w[i]) + (l[i] * volts[i]);
        }

        _near = true;
    }

    /// <summary>Adds conductance and current of every LED to its port.</summary>
    internal void AddTo(double[] portSiemens, double[] portAmps)
    {
        var ports = _plan.ChainPort;
        for (var i = 0; i < _count; i++)
        {
            var port = ports[i];
            portSiemens[port] += _siemens[i];
            portAmps[port] += _amps[i] - (_siemens[i] * _volts[i]);
        }
    }

    /// <summary>Whether at new voltages every LED is so near where it was straightened that its curve cannot be told from the line.</summary>
    internal bool StraightAt(double[] portVolts)
    {
        if (!_near && _count > 0)
        {
            return false;
        }

        Gather(portVolts, _next);
        var b = Lanes(_b);
        var c = Lanes(_c);
        var w = Lanes(_w);
        var volts = Lanes(_volts);
        var next = Lanes(_next);
        var amps = Lanes(_amps);
        for (var i = 0; i < w.Length; i++)
        {
            if (!Straight(b[i], c[i], w[i], amps[i], next[i] - volts[i]))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Current of every LED's chain, on the line it was straightened to.</summary>
    internal void Read(double[] portVolts, double[] chainAmps)
    {
        var ports = _plan.ChainPort;
        for (var i = 0; i < _count; i++)
        {
            chainAmps[i] = _amps[i] + (_siemens[i] * (portVolts[ports[i]] - _volts[i]));
        }
    }

    /// <summary>Whether LEDs cannot be told from their lines a little further on.</summary>
    /// <remarks>The second derivative of c·w by u is c·b²·w/(1 + w)³.</remarks>
    internal static bool Straight(Vector<double> b, Vector<double> c, Vector<double> w, Vector<double> amps, Vector<double> furtherVolts)
    {
        var wp1 = Vector<double>.One + w;
        var step = b * furtherVolts;
        var remainder = RemainderFactor * c * w * step * step / (wp1 * wp1 * wp1);
        var allowed = new Vector<double>(AllowedAmps) + (AllowedShare * Vector.Abs(amps));
        return Vector.LessThanOrEqualAll(Vector.Abs(step), NearShare * wp1) && Vector.LessThanOrEqualAll(Vector.Abs(remainder), allowed);
    }

    private static Span<Vector<double>> Lanes(double[] values) => MemoryMarshal.Cast<double, Vector<double>>(values.AsSpan());

    private void Gather(double[] portVolts, double[] volts)
    {
        var ports = _plan.ChainPort;
        for (var i = 0; i < _count; i++)
        {
            volts[i] = portVolts[ports[i]];
        }
    }
}
