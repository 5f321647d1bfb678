namespace Duskwright.Light.Surfaces;

/// <summary>Reflectances of finishes inside a room.</summary>
public static class Finishes
{
    /// <summary>Bare balsa or card: bare balsa 0.50 to 0.65, from memory.</summary>
    public const double Raw = 0.55;

    /// <summary>Matt black acrylic thinly brushed: 0.05 to 0.10, from memory.</summary>
    public const double Black = 0.06;

    /// <summary>White matt paint: about 0.80 (lighting dictionary).</summary>
    public const double White = 0.80;

    /// <summary>Aluminium foil: 0.75 to 0.88, from memory.</summary>
    public const double Foil = 0.82;

    /// <summary>Tinned solder and bare tinned leads: 0.60, from memory.</summary>
    public const double Solder = 0.60;
}
