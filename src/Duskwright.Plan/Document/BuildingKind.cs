namespace Duskwright.Plan.Document;

/// <summary>What carries the lamps.</summary>
public enum BuildingKind
{
    /// <summary>A building with windows.</summary>
    House,

    /// <summary>A street lamp: its lamps are seen directly.</summary>
    StreetLamp,

    /// <summary>A lit sign or shop front.</summary>
    Sign,

    /// <summary>A boat with a lantern or a lit cabin.</summary>
    Boat,

    /// <summary>A hearth, forge or bonfire.</summary>
    Hearth,
}
