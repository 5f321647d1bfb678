namespace Duskwright.Light.Rooms;

/// <summary>The six inner faces of a room.</summary>
/// <remarks>Axes: x to the right along the front, y from the front to the back, z up, from the front left corner of the floor.</remarks>
public enum BoxFace
{
    /// <summary>x = 0.</summary>
    Left,

    /// <summary>x = width.</summary>
    Right,

    /// <summary>y = 0.</summary>
    Front,

    /// <summary>y = depth.</summary>
    Back,

    /// <summary>z = 0.</summary>
    Floor,

    /// <summary>z = height.</summary>
    Ceiling,
}

/// <summary>How a face lies in the room's axes (0 for x, 1 for y, 2 for z).</summary>
internal static class BoxFaces
{
    internal const int Count = 6;

    /// <summary>The axis the face is square to.</summary>
    internal static int Normal(this BoxFace face) => (int)face / 2;

    /// <summary>Whether the face lies at the far end of that axis.</summary>
    internal static bool IsFar(this BoxFace face) => (int)face % 2 == 1;

    /// <summary>The face's first axis: x, or y on the left and right walls.</summary>
    internal static int Across(this BoxFace face) => face.Normal() == 0 ? 1 : 0;

    /// <summary>The face's second axis: z on walls, y on floor and ceiling.</summary>
    internal static int Along(this BoxFace face) => face.Normal() == 2 ? 1 : 2;

    internal static BoxFace Opposite(this BoxFace face) => (BoxFace)((int)face ^ 1);
}
