using Duskwright.Plan;

namespace Duskwright.Study.Results;

/// <summary>How a pack and its lamps fade over the hours they burn.</summary>
/// <param name="Hours">Hours burnt, from 0 upward; all lists have one item for each.</param>
/// <param name="WorstLightness">Lightness L* of the worst lamp against its own fresh light.</param>
/// <param name="Volts">Voltage of the pack under load.</param>
/// <param name="Amperes">Its current.</param>
/// <param name="ChargeLeft">Share of its charge that is left, 0 to 1.</param>
public sealed record Fade(
    ItemList<double> Hours,
    ItemList<double> WorstLightness,
    ItemList<double> Volts,
    ItemList<double> Amperes,
    ItemList<double> ChargeLeft)
{
    /// <summary>One of the lists read at an hour, straight between its points, level beyond its ends.</summary>
    /// <param name="values">One value for each of <see cref="Hours"/>.</param>
    /// <param name="hour">Hours burnt.</param>
    /// <returns>The value then.</returns>
    public double At(ItemList<double> values, double hour)
    {
        for (var i = 1; i < Hours.Count; i++)
        {
            if (hour <= Hours[i])
            {
                var along = Math.Max(0, (hour - Hours[i - 1]) / (Hours[i] - Hours[i - 1]));
                return values[i - 1] + (along * (values[i] - values[i - 1]));
            }
        }

        return values[^1];
    }
}
