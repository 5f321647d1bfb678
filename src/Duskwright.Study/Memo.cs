using System.Collections.Concurrent;

namespace Duskwright.Study;

/// <summary>Answers kept by the narrow record they were computed from, for this study and the one before it.</summary>
/// <remarks>Every answer is a pure function of its key, so a kept answer and a fresh one are the same.</remarks>
internal sealed class Memo(Memo? before)
{
    private readonly ConcurrentDictionary<object, Lazy<object>> _answers = new();
    private readonly ConcurrentDictionary<object, Lazy<object>>? _earlier = before?._answers;

    internal TAnswer Get<TKey, TAnswer>(TKey key, Func<TKey, TAnswer> compute)
        where TKey : notnull
        where TAnswer : notnull =>
        (TAnswer)_answers.GetOrAdd(
            (typeof(TAnswer), key),
            _ => _earlier is not null && _earlier.TryGetValue((typeof(TAnswer), key), out var kept) ? kept : new Lazy<object>(() => compute(key))).Value;
}
