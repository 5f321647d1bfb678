namespace Duskwright.Book.Drawings;

/// <summary>The tones a drawing is made of; a <see cref="Palette"/> or the screen's stylesheet gives each its colour.</summary>
public enum Tone
{
    /// <summary>Nothing is drawn.</summary>
    None,

    /// <summary>Lines and text.</summary>
    Ink,

    /// <summary>Secondary lines and text.</summary>
    Soft,

    /// <summary>Hairlines.</summary>
    Rule,

    /// <summary>The page.</summary>
    Ground,

    /// <summary>White card.</summary>
    Sheet,

    /// <summary>The upper ground of the board.</summary>
    Board,

    /// <summary>The lower ground of the board.</summary>
    Quay,

    /// <summary>Water.</summary>
    Water,

    /// <summary>Ripples.</summary>
    Deep,

    /// <summary>Leaves.</summary>
    Leaf,

    /// <summary>Slate roofs.</summary>
    Slate,

    /// <summary>Thatched roofs.</summary>
    Thatch,

    /// <summary>Tiled roofs.</summary>
    Tile,

    /// <summary>Cast shadow.</summary>
    Shade,

    /// <summary>Lamplight.</summary>
    Lamp,

    /// <summary>Words on lamplight, dark by day and by night.</summary>
    OnLamp,

    /// <summary>Amber as a line.</summary>
    LampInk,

    /// <summary>A pane, between dark and fully lit as its mark says.</summary>
    Lit,

    /// <summary>Passed.</summary>
    Sound,

    /// <summary>Worth a look.</summary>
    Warn,

    /// <summary>Spoils the show.</summary>
    Spoil,

    /// <summary>Not on a circuit.</summary>
    Circuit0,

    /// <summary>Circuit 1; the circuits have the Okabe-Ito colours.</summary>
    Circuit1,

    /// <summary>Circuit 2.</summary>
    Circuit2,

    /// <summary>Circuit 3.</summary>
    Circuit3,

    /// <summary>Circuit 4.</summary>
    Circuit4,

    /// <summary>Circuit 5.</summary>
    Circuit5,

    /// <summary>Circuit 6.</summary>
    Circuit6,

    /// <summary>Circuit 7.</summary>
    Circuit7,
}
