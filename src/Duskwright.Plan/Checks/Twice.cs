namespace Duskwright.Plan.Checks;

/// <summary>Names that must differ and do not.</summary>
internal static class Twice
{
    internal static IEnumerable<Problem> In(IEnumerable<string> ids, string path, string what)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var index = 0;
        foreach (var id in ids)
        {
            if (id.Length == 0)
            {
                yield return new Problem($"{path}[{index}]", "no-name", $"A {what} has a name without letters or digits.", "Give it a name.");
            }
            else if (!seen.Add(id))
            {
                yield return new Problem($"{path}[{index}]", "named-twice", $"There is another {what} called \"{id}\".", "Give one of them another id.");
            }

            index++;
        }
    }
}
