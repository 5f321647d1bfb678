using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;

namespace Duskwright.Study.Wiring;

/// <summary>A lamp with everything that was not said filled in.</summary>
internal sealed record ResolvedLamp(
    string Building,
    string Name,
    int? Storey,
    int? Room,
    string? RoomName,
    LampPart Part,
    bool PartUnknown,
    Span3 ResistorOhms,
    ResistorOrigin ResistorOrigin,
    double TailOhms,
    double TailMetres,
    string? SwitchGroup,
    double? BehindPaneMetres,
    LampAim Aim);

/// <summary>Where a lamp's resistor comes from.</summary>
internal enum ResistorOrigin
{
    Stated,
    Usual,
    Chosen,
    Unknown,
}

/// <summary>A value at the three corners.</summary>
internal readonly record struct Span3(double Low, double Typical, double High)
{
    internal static Span3 Exactly(double value) => new(value, value, value);

    internal double At(Corner corner) => corner switch
    {
        Corner.Low => Low,
        Corner.High => High,
        _ => Typical,
    };
}

/// <summary>A building's pair with everything that was not said filled in.</summary>
internal sealed record ResolvedPair(
    string Building, WirePart Wire, bool WireUnknown, Span3 Metres, LengthOrigin Origin, Span3 ConductorOhms);

/// <summary>Where a pair's length comes from.</summary>
internal enum LengthOrigin
{
    Measured,
    Route,
    Distance,
    Placed,
    Unknown,
}
