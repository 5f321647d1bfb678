using System.Collections;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace Duskwright.Plan;

/// <summary>An immutable list that is equal to another when its items are, so that records holding lists compare by value.</summary>
/// <typeparam name="T">The items.</typeparam>
[CollectionBuilder(typeof(ItemList), nameof(ItemList.Of))]
public sealed class ItemList<T> : IReadOnlyList<T>, IEquatable<ItemList<T>>
{
    private readonly ImmutableArray<T> _items;

    internal ItemList(ImmutableArray<T> items) => _items = items;

    internal static readonly ItemList<T> Empty = new([]);

    /// <inheritdoc/>
    public int Count => _items.Length;

    /// <inheritdoc/>
    public T this[int index] => _items[index];

    /// <summary>This list with one item more at its end.</summary>
    /// <param name="item">The item.</param>
    /// <returns>A new list.</returns>
    public ItemList<T> Add(T item) => new(_items.Add(item));

    /// <summary>This list with another item in one place.</summary>
    /// <param name="index">The place, counted from 0.</param>
    /// <param name="item">The item.</param>
    /// <returns>A new list.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such place.</exception>
    public ItemList<T> With(int index, T item) => new(_items.SetItem(index, item));

    /// <summary>This list without the item in one place.</summary>
    /// <param name="index">The place, counted from 0.</param>
    /// <returns>A new list.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such place.</exception>
    public ItemList<T> Without(int index) => new(_items.RemoveAt(index));

    /// <summary>Goes through the items in order.</summary>
    /// <returns>An enumerator that allocates nothing.</returns>
    public ImmutableArray<T>.Enumerator GetEnumerator() => _items.GetEnumerator();

    IEnumerator<T> IEnumerable<T>.GetEnumerator() => ((IEnumerable<T>)_items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => ((IEnumerable)_items).GetEnumerator();

    /// <inheritdoc/>
    public bool Equals(ItemList<T>? other) =>
        ReferenceEquals(this, other) || (other is not null && _items.AsSpan().SequenceEqual(other._items.AsSpan()));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ItemList<T>);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var item in _items)
        {
            hash.Add(item);
        }

        return hash.ToHashCode();
    }
}

/// <summary>Makes item lists.</summary>
public static class ItemList
{
    /// <summary>Makes a list of the items given; this is what a collection expression calls.</summary>
    /// <typeparam name="T">The items.</typeparam>
    /// <param name="items">The items in order.</param>
    /// <returns>The list.</returns>
    public static ItemList<T> Of<T>(ReadOnlySpan<T> items) =>
        items.IsEmpty ? ItemList<T>.Empty : new([.. items]);

    /// <summary>Makes a list of what a query yields.</summary>
    /// <typeparam name="T">The items.</typeparam>
    /// <param name="items">The items in order.</param>
    /// <returns>The list.</returns>
    public static ItemList<T> ToItemList<T>(this IEnumerable<T> items) => new([.. items]);
}
