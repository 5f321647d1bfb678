namespace Duskwright.Light.Surfaces;

/// <summary>Transmittance and haze of what windows are glazed with.</summary>
public static class PaneSheets
{
    /// <summary>Clear sheet: 0.90 to 0.92 passes (lighting-software glossary), hardly any scattered.</summary>
    public static (double Transmittance, double Haze) Clear => (0.90, 0.02);

    /// <summary>Sheet frosted on both faces: 0.75 to 0.90 passes, 0.60 to 0.90 scattered by one face, from memory.</summary>
    public static (double Transmittance, double Haze) Frosted => (0.75, 0.90);

    /// <summary>Tracing paper: 0.55 to 0.75 passes, nearly all scattered, from memory.</summary>
    public static (double Transmittance, double Haze) Tracing => (0.65, 0.97);

    /// <summary>Nothing in the opening.</summary>
    public static (double Transmittance, double Haze) Open => (1, 0);

    /// <summary>Share that a coloured varnish lets through of warm light: usual, from memory.</summary>
    public const double TintShare = 0.5;

    /// <summary>Share of a pane that glazing bars leave free: usual, from memory.</summary>
    public const double BarsShare = 0.85;
}
