namespace Duskwright.Store.History;

/// <summary>One thing in which two towns differ.</summary>
/// <param name="Thing">What it belongs to: <c>buildings/chandlery</c>, <c>show</c>.</param>
/// <param name="Field">Which of its fields: <c>leds</c>, <c>place.x_mm</c>; empty where the whole thing is new or gone.</param>
/// <param name="Was">The value in the first; none where it is not there.</param>
/// <param name="Is">The value in the second; none where it is not there.</param>
public sealed record Difference(string Thing, string Field, string? Was, string? Is)
{
    private const int MostLetters = 60;

    /// <summary>The difference on one line: "buildings/chandlery leds: 4, was 3".</summary>
    public string Words => this switch
    {
        { Field: "", Was: null } => $"{Thing.TrimEnd('/')} is new",
        { Field: "", Is: null } => $"{Thing.TrimEnd('/')} is gone",
        _ => $"{Thing.TrimEnd('/')} {Field}".TrimEnd() + $": {Short(Is)}, was {Short(Was)}",
    };

    private static string Short(string? value) => value is null ? "not said" : value.Length <= MostLetters ? value : $"{value[..MostLetters]}…";
}
