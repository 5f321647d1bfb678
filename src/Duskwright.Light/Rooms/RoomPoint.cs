namespace Duskwright.Light.Rooms;

/// <summary>A place in or before a room, or a direction, in the axes of <see cref="BoxFace"/>.</summary>
/// <param name="X">To the right along the front, m.</param>
/// <param name="Y">From the front to the back, m; less than zero before the front.</param>
/// <param name="Z">Above the floor, m.</param>
public readonly record struct RoomPoint(double X, double Y, double Z)
{
    internal double this[int axis] => axis switch { 0 => X, 1 => Y, _ => Z };

    internal double Length => Math.Sqrt(Dot(this));

    /// <summary>From one point to another.</summary>
    public static RoomPoint operator -(RoomPoint to, RoomPoint from) => new(to.X - from.X, to.Y - from.Y, to.Z - from.Z);

    /// <summary>A step from a point.</summary>
    public static RoomPoint operator +(RoomPoint from, RoomPoint step) => new(from.X + step.X, from.Y + step.Y, from.Z + step.Z);

    /// <summary>A step made longer.</summary>
    public static RoomPoint operator *(double times, RoomPoint step) => new(times * step.X, times * step.Y, times * step.Z);

    /// <summary>The inner product of two steps.</summary>
    /// <param name="other">The other step.</param>
    /// <returns>m².</returns>
    public double Dot(RoomPoint other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    internal static RoomPoint Of(BoxFace face, RoomBox box, double across, double along)
    {
        var normal = face.IsFar() ? box.Size(face.Normal()) : 0;
        return face.Normal() switch
        {
            0 => new(normal, across, along),
            1 => new(across, normal, along),
            _ => new(across, along, normal),
        };
    }
}
