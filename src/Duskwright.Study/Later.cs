namespace Duskwright.Study;

/// <summary>A value worked out when it is first asked for; equal to another when the values are.</summary>
/// <typeparam name="T">The value.</typeparam>
/// <param name="work">Works it out; it must hold on to nothing but what it reads.</param>
internal sealed class Later<T>(Func<T> work) : IEquatable<Later<T>>
    where T : notnull
{
    private readonly Lazy<T> _value = new(work);

    internal T Value => _value.Value;

    /// <inheritdoc/>
    public bool Equals(Later<T>? other) => ReferenceEquals(this, other) || (other is not null && Value.Equals(other.Value));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Later<T>);

    // To tell them apart by hash would be to work them out.
    /// <inheritdoc/>
    public override int GetHashCode() => 0;
}
