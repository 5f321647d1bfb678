using Duskwright.Circuits.Supplies;
using Duskwright.Plan.Parts;

namespace Duskwright.Study.Wiring;

/// <summary>Catalogue cells as laws of the circuit engine.</summary>
internal static class PackLaws
{
    private const double SecondsPerHour = 3600;

    internal static bool IsStore(SupplyPart part) =>
        part.Kind is SupplyKind.Alkaline or SupplyKind.NickelMetalHydride or SupplyKind.LithiumCoin;

    /// <summary>The pack's law; none for a regulated supply.</summary>
    internal static PackLaw? Of(PackInput pack) => IsStore(pack.Part) ? Of(pack.Part, pack.Series, pack.Parallel, Usual.HolderOhms) : null;

    internal static PackLaw Of(SupplyPart part, int series, int parallel, double extraOhms) => new(
        new CellLaw(
            part.Charge!.Value.Coulombs,
            part.AvailableShare!.Value,
            part.FollowRatePerHour!.Value / SecondsPerHour,
            [.. part.Curve.Select(p => new CellCurvePoint(p.Left, p.Open.Volts, p.Inside.Ohms))],
            part.EndVoltage?.Volts ?? 0)
        { Rechargeable = part.Kind == SupplyKind.NickelMetalHydride },
        series,
        parallel,
        extraOhms);
}
