namespace Duskwright.Calendar.Scheduling;

/// <summary>Fills what is left of a session to the last minute, so that no evening ends with time for nothing.</summary>
/// <remarks>The subset sums of so few minutes are the bits of one number (Bellman, Dynamic Programming, 1957: the knapsack by its sums).</remarks>
internal static class SessionFill
{
    /// <summary>So much of a session, in minutes, is filled with care; before that the rule alone decides.</summary>
    internal const int MostMinutes = 60;

    /// <summary>The first of some jobs with which the rest of a session is filled as far as it can be.</summary>
    /// <param name="minutes">Minutes of the jobs that can be begun, in the order of the rule; at least one of them fits.</param>
    /// <param name="room">Minutes left; at most <see cref="MostMinutes"/>.</param>
    /// <returns>Its place among them.</returns>
    internal static int First(IReadOnlyList<int> minutes, int room)
    {
        var fullest = Fullest(minutes, -1, room);
        for (var i = 0; i < minutes.Count; i++)
        {
            if (minutes[i] <= room && Fullest(minutes, i, room - minutes[i]) + minutes[i] == fullest)
            {
                return i;
            }
        }

        throw new ArgumentException($"None of the jobs fits into {room} min; at least one must.", nameof(minutes));
    }

    private static int Fullest(IReadOnlyList<int> minutes, int without, int room)
    {
        var (sums, mask) = (1UL, (1UL << (room + 1)) - 1);
        for (var i = 0; i < minutes.Count; i++)
        {
            if (i != without && minutes[i] <= room)
            {
                sums |= (sums << minutes[i]) & mask;
            }
        }

        return 63 - System.Numerics.BitOperations.LeadingZeroCount(sums);
    }
}
