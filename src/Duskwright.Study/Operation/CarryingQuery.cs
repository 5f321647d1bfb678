using Duskwright.Circuits.Networks;
using Duskwright.Circuits.Supplies;
using Duskwright.Light.Perception;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Results;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Operation;

/// <summary>What the count of lamps a pack carries is computed from.</summary>
internal sealed record CarryingQuery(
    SupplyPart Supply, int Series, int Parallel, double ChargeLeft, double SharedOhms, LampPart Lamp, double BranchOhms,
    string LampWords, double LitHoursPerDay, double ShowHours, double DimShare, double SpoiledShare, double VisibleStep)
{
    private const double SecondsPerHour = 3600;

    /// <summary>Finds the three counts.</summary>
    internal Carrying Answer()
    {
        var alone = LightAfter(1, 0);
        var aloneLightness = 100.0;
        Figure Count(string name, Func<int, bool> tooMany, string criterion) =>
            Figure.Given(name, FirstCount(tooMany), "", criterion, Certainty.Computed);
        return new Carrying(
            LampWords,
            Count("lamps from which all look dimmer", n => aloneLightness - Lightness.OfShare(LightAfter(n, 0) / alone) > VisibleStep, $"all lit, fresh, against one alone: ΔL* above {VisibleStep:0.#}"),
            Count("lamps from which they are dim before the end", n => LightAfter(n, ShowHours) < DimShare * alone, $"below {DimShare:P0} of one alone by hour {ShowHours:0.#}"),
            Count("lamps from which they are spoiled before the end", n => LightAfter(n, ShowHours) < SpoiledShare * alone, $"below {SpoiledShare:P0} of one alone by hour {ShowHours:0.#}"));
    }

    /// <summary>Light of each of n equal lamps after some hours; nothing once the cells are dry.</summary>
    /// <remarks>n equal lamps on a shared resistance r act on each like one lamp on n·r, and draw from an n-th of the charge.</remarks>
    internal double LightAfter(int count, double hours)
    {
        var law = LampLaws.Of(Lamp);
        var source = PackLaws.IsStore(Supply)
            ? null
            : new SourceElement(
                "supply", 1, 0, Supply.NominalVoltage.Volts * Series, (Supply.SourceResistance!.Value.Ohms * Series / Parallel * count) + (SharedOhms * count),
                Supply.CurrentLimit is { } limit ? limit.Amperes * Parallel / count : double.PositiveInfinity);
        var network = new Network(2, [source ?? new SourceElement("pack", 1, 0, 1, 1), new LampElement("lamp", 1, 0, law, BranchOhms)]);
        if (source is not null)
        {
            return law.At(Circuits.Solving.OperatingPoint.Solve(network).NodeVolts[1], BranchOhms).Light;
        }

        var pack = PackLaws.Of(Supply, Series, Parallel, SharedOhms);
        var share = pack with
        {
            ExtraOhms = pack.ExtraOhms * count,
            Cell = pack.Cell with
            {
                ChargeCoulombs = pack.Cell.ChargeCoulombs / count,
                Curve = [.. pack.Cell.Curve.Select(p => p with { Ohms = p.Ohms * count })],
            },
        };
        var run = Discharge.Run(
            network,
            [new PackOnNetwork("pack", share, CellState.At(share.Cell, ChargeLeft))],
            new DischargeSettings(LitHoursPerDay * SecondsPerHour, hours * SecondsPerHour));
        var last = run.Steps[^1];
        return last.LitSeconds < hours * SecondsPerHour ? 0 : law.At(last.Solution.NodeVolts[1], BranchOhms).Light;
    }

    // Too many once means too many ever after: a bisection.
    private static int FirstCount(Func<int, bool> tooMany)
    {
        var (fine, over) = (0, 1);
        while (over < Carrying.Most && !tooMany(over))
        {
            (fine, over) = (over, Math.Min(Carrying.Most, over * 2));
        }

        if (over == Carrying.Most && !tooMany(over))
        {
            return Carrying.Most;
        }

        while (over - fine > 1)
        {
            var middle = (fine + over) / 2;
            (fine, over) = tooMany(middle) ? (fine, middle) : (middle, over);
        }

        return over;
    }
}
