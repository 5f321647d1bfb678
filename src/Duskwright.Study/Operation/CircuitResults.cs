using Duskwright.Study.Figures;
using Duskwright.Study.Wiring;

namespace Duskwright.Study.Operation;

/// <summary>Every circuit of a town, run down at the three corners, and where each lamp and supply is found in them.</summary>
internal sealed record CircuitResults(
    IReadOnlyDictionary<(string Building, string Lamp), LampPlace> Lamps, IReadOnlyDictionary<string, PackPlace> Packs)
{
    internal static CircuitResults Of(ResolvedTown resolved, Memo memo)
    {
        var inputs = new[] { Corner.Low, Corner.Typical, Corner.High }.Select(c => CircuitInputs.Of(resolved, c)).ToList();
        var runs = inputs.SelectMany(i => i).AsParallel().AsOrdered().Select(input => memo.Get(input, CircuitRun.Of)).ToList();
        var corners = runs.Chunk(Math.Max(1, inputs[0].Count)).ToList();
        var lamps = new Dictionary<(string, string), LampPlace>();
        var packs = new Dictionary<string, PackPlace>(StringComparer.Ordinal);
        for (var c = 0; c < inputs[0].Count; c++)
        {
            var (low, run, high) = (corners[0][c], corners[1][c], corners[2][c]);
            for (var p = 0; p < run.Circuit.Packs.Count; p++)
            {
                packs[run.Circuit.Packs[p].Input.Supply] = new PackPlace(low, run, high, p);
            }

            for (var l = 0; l < run.Circuit.Lamps.Count; l++)
            {
                lamps[(run.Circuit.Lamps[l].Building, run.Circuit.Lamps[l].Input.Name)] = new LampPlace(low, run, high, l);
            }
        }

        return new CircuitResults(lamps, packs);
    }
}

/// <summary>A lamp in its circuit.</summary>
internal sealed record LampPlace(CircuitRun Low, CircuitRun Run, CircuitRun High, int Index)
{
    internal double Amps(CircuitRun run) => run.Fresh.ElementAmps[run.Circuit.Lamps[Index].Element];
}

/// <summary>A supply in its circuit.</summary>
internal sealed record PackPlace(CircuitRun Low, CircuitRun Run, CircuitRun High, int Index)
{
    internal double Amps(CircuitRun run) => run.Fresh.ElementAmps[run.Circuit.Packs[Index].Source];

    /// <summary>The hour at which its worst lamp falls to a share of its own light, with its range; none where it never does.</summary>
    internal Figure? HoursTo(double share, string name)
    {
        if (FadeFigures.HoursTo(Run.Fades[Index].Fade, share, name) is not { } hours)
        {
            return null;
        }

        double At(CircuitRun run) => FadeFigures.HoursTo(run.Fades[Index].Fade, share, name)?.Value ?? hours.Value;
        return hours.Between(At(Low), At(High));
    }
}
