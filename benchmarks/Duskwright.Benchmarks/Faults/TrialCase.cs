using Duskwright.Circuits.Faulting;
using Duskwright.Faults.Finding;
using Duskwright.Faults.Signatures;

namespace Duskwright.Benchmarks.Faults;

/// <summary>One case: what is wrong, and what is seen and read of it.</summary>
internal sealed record TrialCase(string What, (int, int) Truth, LampLook[] Seen, double? Amps, double? Volts)
{
    internal const double HealthyShare = 0.1;
    internal const double TwoShare = 0.1;
    internal const double MisreadShare = 0.02;
    internal const double Digit = 1e-4;
    internal const double VoltsDigit = 0.01;
    internal const double VoltsShare = 0.005;
    private const double MeterShare = 0.01;

    // Eyes differ: a logistic edge a tenth wide.
    private const double EdgeWidth = 0.06;

    /// <summary>The burden of a 200 mA range.</summary>
    internal const double BurdenOhms = 1.2;

    internal static (int, int) Key(int one, int other = -1) => (Math.Max(one, other), Math.Min(one, other));

    /// <summary>How often a lamp with some light is told to be below an edge.</summary>
    internal static double Edge(double light, double edge) => 1 / (1 + Math.Exp(Math.Log(Math.Max(1e-9, light) / edge) / EdgeWidth));

    /// <summary>How often each fault is made; in the trade's order, and in other proportions than the finder takes for granted.</summary>
    internal static double[] Before(TrialBoard board)
    {
        double[] weights = [.. board.Faults.Select(f => f.Kind switch
        {
            FaultKind.PairOpen or FaultKind.LampJointOpen => 6.0,
            FaultKind.CellFlat => 10,
            FaultKind.PairShorted or FaultKind.LampShorted => 3,
            FaultKind.PairReversed or FaultKind.LampReversed => 2,
            _ => 1.5,
        })];
        var all = weights.Sum();
        return [.. weights.Select(w => w / all)];
    }

    internal static TrialCase Of(TrialBoard board, bool meter, Random chance)
    {
        var before = Before(board);
        int Drawn()
        {
            var at = chance.NextDouble();
            var f = 0;
            while (f < before.Length - 1 && (at -= before[f]) > 0)
            {
                f++;
            }

            return f;
        }

        var (draw, kind, classes) = (TrialDraw.Of(board.Pack, chance), chance.NextDouble(), board.Classes[meter]);
        var burden = meter ? BurdenOhms : 0;
        if (kind < HealthyShare)
        {
            var sound = board.Show(draw, [], burden);
            return new TrialCase("all well", (-1, -1), Looks(sound.SoundLight, chance), Read(sound.SoundAmps, MeterShare, Digit, meter, chance), Read(sound.SoundVolts, VoltsShare, VoltsDigit, meter, chance));
        }

        var one = Drawn();
        if (kind < HealthyShare + TwoShare)
        {
            var other = Drawn();
            while (board.Faults[other].Place == board.Faults[one].Place)
            {
                other = Drawn();
            }

            var both = board.ShowBoth(draw, one, other, burden);
            return new TrialCase("two faults", Key(classes[one], classes[other]), Looks(both.Light, chance), Read(both.Amps, MeterShare, Digit, meter, chance), Read(both.Volts, VoltsShare, VoltsDigit, meter, chance));
        }

        var shown = board.Show(draw, [one], burden);
        return new TrialCase($"{board.Faults[one].Kind}", Key(classes[one]), Looks(shown.Light[0], chance), Read(shown.Amps[0], MeterShare, Digit, meter, chance), Read(shown.Volts[0], VoltsShare, VoltsDigit, meter, chance));
    }

    /// <summary>What the finder is told: every lamp, and the meter's reading with its band.</summary>
    internal Observation Observed()
    {
        var seen = Seen.Select((l, i) => (l, i)).Aggregate(Observation.Nothing, (o, x) => o.Saw(x.i, x.l));
        if (Amps is not { } a || Volts is not { } v)
        {
            return seen;
        }

        var (amps, volts) = ((MeterShare * Math.Abs(a)) + Digit, (VoltsShare * Math.Abs(v)) + VoltsDigit);
        return seen.Read(0, new AmpsReading(a - amps, a + amps)).Read(0, new VoltsReading(v - volts, v + volts));
    }

    private static LampLook[] Looks(double[] light, Random chance) =>
    [
        .. light.Select(l =>
        {
            var at = chance.NextDouble();
            var look = at < Edge(l, BankView.DarkShare) ? LampLook.Dark : at < Edge(l, BankView.DimShare) ? LampLook.Dim : LampLook.Lit;
            return chance.NextDouble() < MisreadShare ? (LampLook)(((int)look + chance.Next(1, 3)) % 3) : look;
        }),
    ];

    // A reading is even within its error, and whole in its last digit.
    private static double? Read(double value, double share, double digit, bool meter, Random chance) =>
        meter ? Math.Round((value * (1 + (share * ((2 * chance.NextDouble()) - 1)))) / digit) * digit : null;
}
