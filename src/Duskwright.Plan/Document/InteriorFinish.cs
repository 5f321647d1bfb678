namespace Duskwright.Plan.Document;

/// <summary>What the light meets inside a room.</summary>
public enum InteriorFinish
{
    /// <summary>Unpainted card or balsa.</summary>
    Raw,

    /// <summary>Matt black throughout.</summary>
    Black,

    /// <summary>Black outside or beneath, white within.</summary>
    White,

    /// <summary>Lined with metal foil.</summary>
    Foil,
}
