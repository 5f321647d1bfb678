using Duskwright.Calendar.Jobs;

namespace Duskwright.Calendar.Tests;

/// <summary>Houses of some steps each, with drying, wet windows, a shelf and evenings, at random.</summary>
internal static class RandomWork
{
    /// <summary>Work for which there may or may not be a schedule.</summary>
    internal static readonly Gen<BuildWork> Any =
        from houses in Gen.Int[1, 5]
        from steps in Gen.Int[2, 5]
        from minutes in Gen.Int[0, 45].Array[houses * steps]
        from drying in Gen.Int[0, 400].Array[houses * steps]
        from window in Gen.Int[0, 600].Array[houses * steps]
        from windowed in Gen.Int[0, 4].Array[houses * steps]
        from held in Gen.Int[0, 200].Array[houses * steps]
        from hands in Gen.Int[1, 2]
        from shelf in Gen.Int[1, 3]
        from evening in Gen.Int[45, 200]
        from inSessions in Gen.Bool
        select new BuildWork(
            [.. Enumerable.Range(0, houses * steps).Select(i => new Job($"{i / steps}.{i % steps}", minutes[i])
            {
                House = $"{i / steps}",
                DryingMinutes = drying[i] / 2,
                Uses = i % 3 == 0 ? [new Use("hands"), new Use("shelf", 1, held[i])] : [new Use("hands")],
            })],
            [.. Enumerable.Range(0, houses * steps).Where(i => i % steps > 0).Select(i => new Lag(
                $"{i / steps}.{(i % steps) - 1}", $"{i / steps}.{i % steps}", drying[i], windowed[i] == 0 ? drying[i] + window[i] : null, i % 2 == 0 ? LagStart.Finish : LagStart.Start))],
            [new Resource("hands", hands), new Resource("shelf", shelf)])
        {
            Sessions = inSessions ? [.. Bench.Evenings(60, evening)] : [],
        };

    /// <summary>Work without latest times, for which there always is a schedule.</summary>
    internal static readonly Gen<BuildWork> Sound = Any.Select(w => w with { Lags = [.. w.Lags.Select(l => l with { AtMost = null })] });

    /// <summary>Three short jobs, small enough to try every minute.</summary>
    internal static readonly Gen<BuildWork> Tiny =
        from minutes in Gen.Int[0, 4].Array[3]
        from drying in Gen.Int[0, 4].Array[3]
        from wait in Gen.Int[0, 4].Array[2]
        from window in Gen.Int[0, 3].Array[2]
        from windowed in Gen.Bool.Array[2]
        from notBefore in Gen.Int[0, 3].Array[3]
        from hands in Gen.Int[1, 2]
        from session in Gen.Int[2, 5]
        from inSessions in Gen.Bool
        from first in Gen.Int[0, 1]
        select new BuildWork(
            [.. Enumerable.Range(0, 3).Select(i => Bench.Step($"{i}", minutes[i], drying: drying[i], notBefore: notBefore[i]))],
            [new Lag("0", "1", wait[0], windowed[0] ? wait[0] + window[0] : null), new Lag($"{first}", "2", wait[1], windowed[1] ? wait[1] + window[1] : null, LagStart.Start)],
            [new Resource("hands", hands)])
        {
            Sessions = inSessions ? [new(1, 1 + session), new(3 + session, 3 + (2 * session)), new(5 + (2 * session), 7 + (3 * session))] : [],
        };
}
