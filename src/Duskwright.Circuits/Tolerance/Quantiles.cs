using Duskwright.Circuits.Fitting;

namespace Duskwright.Circuits.Tolerance;

/// <summary>The value below which a share of many values lies, without sorting them all.</summary>
/// <remarks>Hoare's FIND (Communications of the ACM 4 (1961) 321): what lies on the wrong side of a pivot is changed over until the place sought is alone.</remarks>
internal static class Quantiles
{
    /// <summary>The 5th, 50th and 95th of a hundred.</summary>
    /// <param name="values">At least one; they are put into another order.</param>
    internal static Estimate Of(Span<double> values)
    {
        var (low, middle, high) = (Place(values, 0.05), Place(values, 0.5), Place(values, 0.95));
        var likely = Find(values, middle, 0, values.Length - 1);
        return new Estimate(Find(values, low, 0, middle), likely, Find(values, high, middle, values.Length - 1));
    }

    private static int Place(Span<double> values, double share) => Math.Min(values.Length - 1, (int)(share * values.Length));

    private static double Find(Span<double> values, int place, int first, int last)
    {
        while (first < last)
        {
            var pivot = values[first + ((last - first) / 2)];
            var (i, j) = (first, last);
            while (i <= j)
            {
                while (values[i] < pivot)
                {
                    i++;
                }

                while (values[j] > pivot)
                {
                    j--;
                }

                if (i <= j)
                {
                    (values[i], values[j]) = (values[j], values[i]);
                    (i, j) = (i + 1, j - 1);
                }
            }

            if (place <= j)
            {
                last = j;
            }
            else if (place >= i)
            {
                first = i;
            }
            else
            {
                break;
            }
        }

        return values[place];
    }
}
