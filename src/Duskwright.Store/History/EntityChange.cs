namespace Duskwright.Store.History;

/// <summary>A piece of the document that is not what it was.</summary>
/// <param name="Path">Which piece.</param>
/// <param name="Before">Its JSON before; none where it is new.</param>
/// <param name="After">Its JSON after; none where it is gone.</param>
internal sealed record EntityChange(string Path, string? Before, string? After)
{
    /// <summary>What turns some pieces into others.</summary>
    /// <param name="before">The pieces before.</param>
    /// <param name="after">The pieces after.</param>
    /// <returns>The changes, in order of path within those that are there after.</returns>
    internal static List<EntityChange> Between(IReadOnlyDictionary<string, string> before, IReadOnlyDictionary<string, string> after)
    {
        var changes = new List<EntityChange>();
        foreach (var (path, value) in after)
        {
            if (before.GetValueOrDefault(path) is var was && was != value)
            {
                changes.Add(new EntityChange(path, was, value));
            }
        }

        changes.AddRange(before.Where(b => !after.ContainsKey(b.Key)).Select(b => new EntityChange(b.Key, b.Value, null)));
        return changes;
    }

    /// <summary>The same change the other way round.</summary>
    internal EntityChange Reversed => new(Path, After, Before);

    /// <summary>Makes the change.</summary>
    /// <param name="pieces">The pieces; they are changed.</param>
    internal void ApplyTo(SortedDictionary<string, string> pieces)
    {
        if (After is null)
        {
            pieces.Remove(Path);
        }
        else
        {
            pieces[Path] = After;
        }
    }
}
