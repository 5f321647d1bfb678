using System.Collections.Concurrent;

namespace Duskwright.Study;

/// <summary>Answers kept by the narrow record they were computed from, for this study and the few before it.</summary>
/// <remarks>
/// Every answer is a pure function of its key, so a kept answer and a fresh one are the same. The few before count because a quick
/// hand overtakes the slower answers of the last edits.
/// </remarks>
internal sealed class Memo(Memo? before)
{
    private const int MostEarlier = 8;
    private readonly ConcurrentDictionary<Known, Lazy<object>> _answers = new();
    private readonly ConcurrentDictionary<Known, Lazy<object>>[] _earlier = before is null ? [] : [before._answers, .. before._earlier.Take(MostEarlier - 1)];

    internal TAnswer Get<TKey, TAnswer>(TKey key, Func<TKey, TAnswer> compute)
        where TKey : notnull
        where TAnswer : notnull =>
        (TAnswer)_answers.GetOrAdd(new Known(typeof(TAnswer), key), known => Kept(known) ?? new Lazy<object>(() => compute(key))).Value;

    private Lazy<object>? Kept(Known key)
    {
        foreach (var answers in _earlier)
        {
            if (answers.TryGetValue(key, out var kept))
            {
                return kept;
            }
        }

        return null;
    }

    // A key may be a whole circuit, and is looked up in every study kept: its hash is taken once.
    private readonly struct Known(Type answer, object key) : IEquatable<Known>
    {
        private readonly int _hash = HashCode.Combine(answer, key);
        private readonly Type _answer = answer;
        private readonly object _key = key;

        public bool Equals(Known other) => _hash == other._hash && _answer == other._answer && _key.Equals(other._key);

        public override bool Equals(object? obj) => obj is Known other && Equals(other);

        public override int GetHashCode() => _hash;
    }
}
