namespace Duskwright.Study.Lists;

/// <summary>A caution that goes with this town's work.</summary>
/// <param name="Topic">A word or two: "Short circuits".</param>
/// <param name="Words">What to mind.</param>
public sealed record Caution(string Topic, string Words);
