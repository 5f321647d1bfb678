namespace Duskwright.Plan.Document;

/// <summary>Words that may stand where a part's id stands.</summary>
public static class PartId
{
    /// <summary>The part is built in and not known; its effect is shown as a range.</summary>
    public const string Unknown = "unknown";
}
