using System.Globalization;
using Duskwright.Plan.Edits;

namespace Duskwright.Towns;

/// <summary>A room, a window or a lamp of a house, as the drawings of the house name it.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="At">The room it is, or is in.</param>
/// <param name="Index">Which window or lamp of the room, counted from 0; 0 for a room.</param>
public sealed record HousePiece(PieceKind Kind, RoomAt At, int Index)
{
    /// <summary>Its key in a drawing.</summary>
    public string Key => Kind == PieceKind.Room ? $"room:{At.Storey}/{At.Room}" : $"{Kind.ToString().ToLowerInvariant()}:{At.Storey}/{At.Room}/{Index}";

    /// <summary>Reads a key.</summary>
    /// <param name="key">A key: <c>window:0/0/1</c>.</param>
    /// <returns>The piece; none where the key names none.</returns>
    public static HousePiece? Of(string? key)
    {
        if (key?.Split(':') is not [var word, var numbers] || !Enum.TryParse<PieceKind>(word, ignoreCase: true, out var kind))
        {
            return null;
        }

        var places = numbers.Split('/').Select(n => int.TryParse(n, NumberStyles.None, CultureInfo.InvariantCulture, out var place) ? place : -1).ToList();
        return places.Contains(-1) || places.Count != (kind == PieceKind.Room ? 2 : 3) ? null : new HousePiece(kind, new RoomAt(places[0], places[1]), places.ElementAtOrDefault(2));
    }
}

/// <summary>Kinds of pieces of a house.</summary>
public enum PieceKind
{
    /// <summary>A room.</summary>
    Room,

    /// <summary>A window.</summary>
    Window,

    /// <summary>A lamp.</summary>
    Lamp,
}
