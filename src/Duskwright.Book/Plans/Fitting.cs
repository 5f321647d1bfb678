using Duskwright.Book.Drawings;

namespace Duskwright.Book.Plans;

/// <summary>Words made to fit where a drawing has room for them; an ellipsis tells that some are left out.</summary>
internal static class Fitting
{
    /// <summary>Words cut to a width, mm at true size.</summary>
    internal static string Short(string words, Hand hand, double width)
    {
        if (words.Length <= 1 || Width(words, hand) <= width)
        {
            return words;
        }

        // The longest beginning that fits with its ellipsis, found by halving: names may be very long.
        var (fits, tooLong) = (1, words.Length);
        while (tooLong - fits > 1)
        {
            var half = (fits + tooLong) / 2;
            (fits, tooLong) = Width($"{words[..half]}…", hand) <= width ? (half, tooLong) : (fits, half);
        }

        return $"{words[..fits].TrimEnd()}…";
    }

    /// <summary>Words over a few lines of a width, mm at true size.</summary>
    internal static IEnumerable<string> Lines(string words, Hand hand, double width, int most)
    {
        var left = words.Split(' ', StringSplitOptions.RemoveEmptyEntries).ToList();
        for (var line = 1; line <= most && left.Count > 0; line++)
        {
            var fits = line == most ? left.Count : Math.Max(1, Enumerable.Range(1, left.Count).TakeWhile(n => Width(string.Join(' ', left.Take(n)), hand) <= width).LastOrDefault());
            yield return Short(string.Join(' ', left.Take(fits)), hand, width);
            left.RemoveRange(0, fits);
        }
    }

    private static float Width(string words, Hand hand) => Labels.Width(new Label(words, hand), 1);
}
