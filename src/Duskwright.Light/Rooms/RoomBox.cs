using System.Collections.Immutable;

namespace Duskwright.Light.Rooms;

/// <summary>A closed room as a box; its floor and partitions let nothing through.</summary>
/// <remarks>Finishes are matt: foil, which is partly a mirror, counts as a matt surface of its reflectance.</remarks>
public sealed record RoomBox
{
    /// <summary>Makes a room of one finish.</summary>
    /// <param name="widthMetres">Inside width along the front, m, more than zero.</param>
    /// <param name="depthMetres">Inside depth, m, more than zero.</param>
    /// <param name="heightMetres">Inside height, m, more than zero.</param>
    /// <param name="reflectance">Reflectance of its inside, 0 to less than 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not more than zero, or the reflectance is outside its range.</exception>
    public RoomBox(double widthMetres, double depthMetres, double heightMetres, double reflectance)
        : this(widthMetres, depthMetres, heightMetres, [.. Enumerable.Repeat(reflectance, BoxFaces.Count)])
    {
    }

    /// <summary>Makes a room whose faces differ.</summary>
    /// <param name="widthMetres">Inside width along the front, m, more than zero.</param>
    /// <param name="depthMetres">Inside depth, m, more than zero.</param>
    /// <param name="heightMetres">Inside height, m, more than zero.</param>
    /// <param name="reflectances">Reflectance of each face in the order of <see cref="BoxFace"/>, 0 to less than 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not more than zero, or a reflectance is outside its range.</exception>
    public RoomBox(double widthMetres, double depthMetres, double heightMetres, ImmutableArray<double> reflectances)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(reflectances.Length, BoxFaces.Count);
        foreach (var size in new[] { widthMetres, depthMetres, heightMetres })
        {
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(size);
        }

        foreach (var reflectance in reflectances)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(reflectance);
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(reflectance, 1);
        }

        (WidthMetres, DepthMetres, HeightMetres, Reflectances) = (widthMetres, depthMetres, heightMetres, reflectances);
    }

    /// <summary>Inside width along the front, m.</summary>
    public double WidthMetres { get; }

    /// <summary>Inside depth, m.</summary>
    public double DepthMetres { get; }

    /// <summary>Inside height, m.</summary>
    public double HeightMetres { get; }

    /// <summary>Reflectance of each face in the order of <see cref="BoxFace"/>.</summary>
    public ImmutableArray<double> Reflectances { get; }

    /// <summary>All its inside, m².</summary>
    public double InsideArea => 2 * ((WidthMetres * DepthMetres) + (WidthMetres * HeightMetres) + (DepthMetres * HeightMetres));

    internal double Size(int axis) => axis switch { 0 => WidthMetres, 1 => DepthMetres, _ => HeightMetres };
}
