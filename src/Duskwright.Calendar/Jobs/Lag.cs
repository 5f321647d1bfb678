namespace Duskwright.Calendar.Jobs;

/// <summary>How long after one job another may, or must, be begun. Drying runs in clock time, through the night.</summary>
/// <param name="From">The id of the job that comes first.</param>
/// <param name="To">The id of the job that waits.</param>
/// <param name="AtLeast">Minutes to wait at least: drying; none where only the latest is limited. May be negative: so much before.</param>
/// <param name="AtMost">Minutes to wait at most: the glue is still wet; none where it may wait for ever.</param>
/// <param name="Measured">Whether the minutes are counted from the first job's start or from its finish.</param>
public sealed record Lag(string From, string To, int? AtLeast = 0, int? AtMost = null, LagStart Measured = LagStart.Finish);

/// <summary>From where a lag is counted; always to the start of the second job.</summary>
public enum LagStart
{
    /// <summary>From the moment the first job's hands-on time ends.</summary>
    Finish,

    /// <summary>From the moment the first job is begun.</summary>
    Start,
}
