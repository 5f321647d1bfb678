using SkiaSharp;

namespace Duskwright.Book.Drawings;

/// <summary>The colour of each tone on one kind of page.</summary>
public sealed class Palette
{
    private readonly IReadOnlyDictionary<Tone, SKColor> _colours;

    private Palette(IReadOnlyDictionary<Tone, SKColor> colours) => _colours = colours;

    /// <summary>White paper: black lines, pale grounds, circuits told apart by number and dash even without colour.</summary>
    public static Palette Paper { get; } = new(new Dictionary<Tone, SKColor>
    {
        [Tone.Ink] = SKColors.Black,
        [Tone.Soft] = new(0x45, 0x45, 0x4D),
        [Tone.Rule] = new(0xB5, 0xB2, 0xAA),
        [Tone.Ground] = SKColors.White,
        [Tone.Sheet] = SKColors.White,
        [Tone.Board] = SKColors.White,
        [Tone.Quay] = new(0xF7, 0xF5, 0xF0),
        [Tone.Water] = new(0xEF, 0xF2, 0xF3),
        [Tone.Deep] = new(0xCF, 0xD7, 0xDB),
        [Tone.Leaf] = new(0xEC, 0xF2, 0xEC),
        [Tone.Slate] = new(0xEE, 0xEE, 0xF1),
        [Tone.Thatch] = new(0xF8, 0xF1, 0xE2),
        [Tone.Tile] = new(0xF9, 0xEE, 0xE5),
        [Tone.Shade] = new(0, 0, 0, 0x1C),
        [Tone.Lamp] = new(0xFF, 0xD9, 0x8F),
        [Tone.OnLamp] = SKColors.Black,
        [Tone.LampInk] = new(0x8A, 0x52, 0),
        [Tone.Sound] = new(0x1F, 0x6B, 0x46),
        [Tone.Warn] = new(0x8A, 0x52, 0),
        [Tone.Spoil] = new(0xA3, 0x26, 0x2F),
        [Tone.Circuit0] = new(0x5C, 0x5D, 0x73),
        [Tone.Circuit1] = new(0, 0x72, 0xB2),
        [Tone.Circuit2] = new(0xD5, 0x5E, 0),
        [Tone.Circuit3] = new(0, 0x9E, 0x73),
        [Tone.Circuit4] = new(0xCC, 0x79, 0xA7),
        [Tone.Circuit5] = new(0x56, 0xB4, 0xE9),
        [Tone.Circuit6] = new(0xE6, 0x9F, 0),
        [Tone.Circuit7] = new(0x7A, 0x70, 0),
    });

    /// <summary>The colour of a tone.</summary>
    /// <param name="tone">The tone; not <see cref="Tone.None"/>.</param>
    /// <param name="lit">For <see cref="Tone.Lit"/>: how lit, 0 to 1.</param>
    /// <returns>The colour.</returns>
    public SKColor Of(Tone tone, double lit = 1) => tone == Tone.Lit ? Mixed(_colours[Tone.Soft], _colours[Tone.Lamp], lit) : _colours[tone];

    private static SKColor Mixed(SKColor dark, SKColor lit, double share)
    {
        byte Channel(byte from, byte to) => (byte)Math.Round(from + ((to - from) * Math.Clamp(share, 0, 1)));
        return new SKColor(Channel(dark.Red, lit.Red), Channel(dark.Green, lit.Green), Channel(dark.Blue, lit.Blue));
    }
}
