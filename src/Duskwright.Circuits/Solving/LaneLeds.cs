using System.Numerics;
using Duskwright.Circuits.Lamps;
using Duskwright.Circuits.Networks;

namespace Duskwright.Circuits.Solving;

/// <summary>All LEDs of several networks of one structure, by the equations of <see cref="LedBank"/>: one network a lane.</summary>
internal sealed class LaneLeds
{
    private readonly PortPlan _plan;
    private readonly Lane[] _lanes;
    private readonly (Vector<double> W, Vector<double> Z)[] _start;

    internal LaneLeds(PortPlan plan)
    {
        _plan = plan;
        _lanes = new Lane[plan.LedChains];
        _start = new (Vector<double> W, Vector<double> Z)[plan.LedChains];
    }

    /// <summary>Takes the numbers of one chain.</summary>
    /// <param name="chain">The chain.</param>
    /// <param name="values">The numbers.</param>
    /// <param name="wireOhms">Resistance of the resistors in it, Ω.</param>
    internal void Load(int chain, LaneValues values, Vector<double> wireOhms)
    {
        var element = _plan.LedElement[chain];
        var (ownOhms, thermal, inside, refAmps) = (values.Ohms[element], values.ThermalVolts[element], values.InsideOhms[element], values.RefAmps[element]);
        var isLed = Vector.GreaterThan(thermal, Vector<double>.Zero);
        thermal = Vector.ConditionalSelect(isLed, thermal, Vector<double>.One);
        var leak = new Vector<double>(LampLaw.LeakSiemens);
        var share = Vector<double>.One / (Vector<double>.One + (wireOhms * leak));
        var ohms = Vector.Max(inside + ownOhms + (share * wireOhms), new Vector<double>(LedLaw.LeastOhms));
        var signed = values.Signs[element] * _plan.ElementSign[element] * share;
        ref var lane = ref _lanes[chain];
        lane.A = Vector.ConditionalSelect(isLed, Vector.Log(refAmps * ohms / thermal) + (((inside * refAmps) - values.RefVolts[element]) / thermal), Vector<double>.Zero);
        lane.B = Vector.ConditionalSelect(isLed, signed / thermal, Vector<double>.Zero);
        lane.C = Vector.ConditionalSelect(isLed, signed * thermal / ohms, Vector<double>.Zero);
        lane.L = Vector.ConditionalSelect(isLed, share * leak, Vector<double>.One / (wireOhms + ownOhms));
    }

    /// <summary>Works out where every LED stands at the voltages from which all solves will start, with the numbers of now.</summary>
    internal void Prepare(Vector<double>[] portVolts)
    {
        for (var i = 0; i < _lanes.Length; i++)
        {
            var z = _lanes[i].A + (_lanes[i].B * portVolts[_plan.ChainPort[i]]);
            _start[i] = (WrightOmega.Of(z), z);
        }
    }

    /// <summary>Sets every LED back to where it stands at the start.</summary>
    internal void Start()
    {
        for (var i = 0; i < _lanes.Length; i++)
        {
            (_lanes[i].W, _lanes[i].Z) = _start[i];
        }
    }

    /// <summary>Straightens every LED at the voltages of its port and adds conductance and current to it.</summary>
    internal void Straighten(Vector<double>[] portVolts, Vector<double>[] portSiemens, Vector<double>[] portAmps)
    {
        var ports = _plan.ChainPort;
        for (var i = 0; i < _lanes.Length; i++)
        {
            ref var lane = ref _lanes[i];
            var volts = portVolts[ports[i]];
            var z = lane.A + (lane.B * volts);
            // Most lamps stand at the start of a solve where they stood when all were sound.
            if (!Vector.EqualsAll(z, lane.Z))
            {
                (lane.W, lane.Z) = (WrightOmega.Followed(lane.W, lane.Z, z), z);
            }

            lane.Volts = volts;
            lane.Siemens = (lane.B * lane.C * lane.W / (Vector<double>.One + lane.W)) + lane.L;
            lane.Amps = (lane.C * lane.W) + (lane.L * volts);
            portSiemens[ports[i]] += lane.Siemens;
            portAmps[ports[i]] += lane.Amps - (lane.Siemens * volts);
        }
    }

    /// <summary>Whether at new voltages every LED is so near where it was straightened that its curve cannot be told from the line.</summary>
    internal bool StraightAt(Vector<double>[] portVolts)
    {
        var ports = _plan.ChainPort;
        for (var i = 0; i < _lanes.Length; i++)
        {
            ref readonly var lane = ref _lanes[i];
            if (!LedBank.Straight(lane.B, lane.C, lane.W, lane.Amps, portVolts[ports[i]] - lane.Volts))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Current of every LED's chain, on the line it was straightened to.</summary>
    internal void Read(Vector<double>[] portVolts, Vector<double>[] chainAmps)
    {
        var ports = _plan.ChainPort;
        for (var i = 0; i < _lanes.Length; i++)
        {
            chainAmps[i] = _lanes[i].Amps + (_lanes[i].Siemens * (portVolts[ports[i]] - _lanes[i].Volts));
        }
    }

    // What LedBank keeps by chain, together so that one walk over memory reads it all.
    private struct Lane
    {
        internal Vector<double> A;
        internal Vector<double> B;
        internal Vector<double> C;
        internal Vector<double> L;
        internal Vector<double> W;
        internal Vector<double> Z;
        internal Vector<double> Volts;
        internal Vector<double> Amps;
        internal Vector<double> Siemens;
    }
}
