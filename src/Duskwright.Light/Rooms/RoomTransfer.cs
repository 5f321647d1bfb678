using System.Buffers;
using System.Collections.Immutable;

namespace Duskwright.Light.Rooms;

/// <summary>What each lamp of a room does to each of its panes; light being additive, any currents follow from it without solving again.</summary>
public sealed class RoomTransfer
{
    private RoomTransfer(LitRoom room, ImmutableArray<LampReach> lamps, ImmutableArray<PaneGrid> panes) => (Room, Lamps, Panes) = (room, lamps, panes);

    /// <summary>The room.</summary>
    public LitRoom Room { get; }

    /// <summary>What each lamp does by itself, in the order of the room's lamps.</summary>
    public ImmutableArray<LampReach> Lamps { get; }

    /// <summary>How the luminance map of each pane is divided, in the order of the room's panes.</summary>
    public ImmutableArray<PaneGrid> Panes { get; }

    /// <summary>Solves a room.</summary>
    /// <param name="room">The room.</param>
    /// <param name="mesh">How finely it is cut.</param>
    /// <returns>What each lamp does.</returns>
    public static RoomTransfer Of(LitRoom room, RoomMesh mesh)
    {
        ArgumentNullException.ThrowIfNull(room);
        ArgumentNullException.ThrowIfNull(mesh);
        var grids = mesh.Cut(room.Box, room.Panes);
        var patches = new RoomPatches(room, grids);

        // Megabytes for each room: fetching them anew from the machine would take a quarter of the time.
        var exchange = ArrayPool<double>.Shared.Rent(patches.Count * patches.Count);
        try
        {
            ExchangeAreas.Fill(exchange, room.Box, grids, patches.Count);
            return new(room, [.. room.Lamps.Select(lamp => Reach(patches, exchange, lamp))], [.. patches.Panes.Select(p => p.Grid)]);
        }
        finally
        {
            ArrayPool<double>.Shared.Return(exchange);
        }
    }

    private static LampReach Reach(RoomPatches patches, double[] exchange, RoomLamp lamp)
    {
        var lumens = patches.LumensFrom(lamp);
        var direct = new double[patches.Count];
        for (var i = 0; i < patches.Count; i++)
        {
            direct[i] = lumens[i] / patches.Areas[i];
        }

        var solved = Interreflection.Solve(exchange, patches.Areas, patches.Reflectances, direct, new double[patches.Count]);
        if (!solved.Converged)
        {
            throw new InvalidOperationException($"The light of a room did not settle: residual {solved.Residual} after {solved.Steps} steps.");
        }

        var panes = patches.Panes.Select(pane => new PaneReach(
            [.. pane.Patches.Select(p => solved.Lux[p])],
            [.. pane.Behind.Select(p => solved.Lux[p] * patches.Reflectances[p] / Math.PI)]));
        var absorbed = 0.0;
        for (var i = 0; i < patches.Count; i++)
        {
            absorbed += solved.Lux[i] * patches.Areas[i] * patches.Absorbed[i];
        }

        return new LampReach(lamp.Lobe.Lumens, absorbed, patches.MeanLux(solved.Lux), patches.MostLux(solved.Lux), [.. panes]);
    }
}

/// <summary>What one lamp does in its room.</summary>
/// <param name="Lumens">What it sends out, lm.</param>
/// <param name="AbsorbedLumens">What walls and panes swallow of it, lm; the rest goes out through the panes.</param>
/// <param name="FaceLux">Mean illuminance of each face in the order of <see cref="BoxFace"/>, lx.</param>
/// <param name="FaceMostLux">Illuminance of the brightest patch of each face, likewise, lx.</param>
/// <param name="Panes">What it does to each pane.</param>
public sealed record LampReach(double Lumens, double AbsorbedLumens, ImmutableArray<double> FaceLux, ImmutableArray<double> FaceMostLux, ImmutableArray<PaneReach> Panes);

/// <summary>What one lamp does to one pane, part by part as <see cref="PaneGrid"/> divides it.</summary>
/// <param name="Lux">Illuminance of the pane's inner face, lx.</param>
/// <param name="BehindLuminance">Luminance of what lies straight behind, cd/m².</param>
public sealed record PaneReach(ImmutableArray<double> Lux, ImmutableArray<double> BehindLuminance);

/// <summary>How a pane's map is divided: row by row from the lower end with the smaller coordinate.</summary>
/// <param name="Columns">Parts across.</param>
/// <param name="Areas">Area of each part, m².</param>
public sealed record PaneGrid(int Columns, ImmutableArray<double> Areas)
{
    /// <summary>Its whole area, m².</summary>
    public double Area => Areas.Sum();

    /// <summary>The mean of something known part by part.</summary>
    /// <param name="parts">Its value in each part.</param>
    /// <returns>The mean over the pane's area.</returns>
    public double Mean(ImmutableArray<double> parts)
    {
        var sum = 0.0;
        for (var i = 0; i < parts.Length; i++)
        {
            sum += parts[i] * Areas[i];
        }

        return sum / Area;
    }
}
