using Duskwright.Plan.Document;

namespace Duskwright.Parts;

/// <summary>What the choices of a house are called on the screen.</summary>
public static class MakersWords
{
    /// <summary>A wall.</summary>
    public static string Of(WallSide wall) => wall switch { WallSide.Front => "front", WallSide.Right => "right side", WallSide.Back => "back", _ => "left side" };

    /// <summary>A pane's material.</summary>
    public static string Of(PaneMaterial material) => material switch { PaneMaterial.Clear => "clear sheet", PaneMaterial.Frosted => "frosted sheet", PaneMaterial.Tracing => "tracing paper", _ => "open, no pane" };

    /// <summary>A pane's tint.</summary>
    public static string Of(PaneTint tint) => tint == PaneTint.None ? "no tint" : tint.ToString().ToLowerInvariant();

    /// <summary>What the light meets inside.</summary>
    public static string Of(InteriorFinish finish) => finish switch { InteriorFinish.Raw => "raw card or balsa", InteriorFinish.Black => "matt black", InteriorFinish.White => "black outside, white within", _ => "metal foil" };

    /// <summary>Where a lamp points.</summary>
    public static string Of(LampAim aim) => aim == LampAim.AtPane ? "at the pane" : "away from the pane";

    /// <summary>A roof's shape.</summary>
    public static string Of(RoofShape shape) => shape switch { RoofShape.Gable => "gable", RoofShape.Hip => "hip", RoofShape.Point => "cone or pyramid", _ => "flat" };

    /// <summary>A roof's covering.</summary>
    public static string Of(RoofCovering covering) => covering.ToString().ToLowerInvariant();
}
