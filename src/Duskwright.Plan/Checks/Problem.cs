namespace Duskwright.Plan.Checks;

/// <summary>Something in a document that cannot be: where, by which rule, what, and what would help.</summary>
/// <param name="Path">Where: <c>buildings[3].leds</c>, or a line of a list.</param>
/// <param name="Rule">The rule's short name, stable.</param>
/// <param name="Message">One sentence: what is wrong and what is allowed.</param>
/// <param name="Remedy">One short sentence: what to do.</param>
public sealed record Problem(string Path, string Rule, string Message, string Remedy)
{
    /// <summary>The place to show before the message; empty where the message begins with it, as in lists.</summary>
    public string Place => Message.StartsWith(Path, StringComparison.OrdinalIgnoreCase) ? "" : Path;
}
