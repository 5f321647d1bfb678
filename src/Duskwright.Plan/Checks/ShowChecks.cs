using Duskwright.Plan.Document;

namespace Duskwright.Plan.Checks;

/// <summary>The show and the rules of wiring.</summary>
internal static class ShowChecks
{
    internal static IEnumerable<Problem> Of(Town town)
    {
        var show = town.Show;
        if (!(show.HoursPerDay.Hours is > 0 and <= 24))
        {
            yield return new Problem("show.hours_per_day_h", "hours", $"The show lasts {show.HoursPerDay.Hours} hours a day; more than 0 and at most 24 is allowed.", "Write the hours the lamps burn in a day.");
        }

        if (show.Days is < 1 or > 366)
        {
            yield return new Problem("show.days", "days", $"The show lasts {show.Days} days; 1 to 366 are allowed.", "Write the days without changing cells.");
        }

        if (show.RoomIlluminance is { Lux: < 0 or > 200_000 } light)
        {
            yield return new Problem("show.room_illuminance_lx", "room-light", $"The room has {light.Lux} lx; 0 to 200000 is allowed.", "A lit kitchen has about 300 lx, a candle at arm's length 1 to 3.");
        }

        if (show.RoomTemperatureC is { } temperature && !(temperature is >= -30 and <= 60))
        {
            yield return new Problem("show.room_temperature_c", "temperature", $"The room is at {temperature} °C; −30 to 60 is allowed.", "Leave it out for 20 °C.");
        }

        foreach (var (field, share) in new[] { ("show.dim_share", show.DimShare), ("show.spoiled_share", show.SpoiledShare), ("wiring.spare_share", town.Wiring.SpareShare ?? 0) })
        {
            if (!(share is >= 0 and <= 1))
            {
                yield return new Problem(field, "share", $"{field} is {share}; 0 to 1 is allowed.", "Write 0.5 for half.");
            }
        }

        if (!(show.VisibleStep is > 0 and <= 100))
        {
            yield return new Problem("show.visible_step", "share", $"The visible step is {show.VisibleStep}; more than 0 and at most 100 is allowed.", "Leave it out for 5.");
        }

        if (town.Wiring.DetourFactor is { } detour && !(detour is >= 1 and <= 10))
        {
            yield return new Problem("wiring.detour_factor", "detour", $"Pairs are said to be {detour} times as long as the straight way; 1 to 10 is allowed.", "Leave it out for 1.4.");
        }

        foreach (var (field, value) in new (string, double?)[]
        {
            ("wiring.lamp_current_ma", town.Wiring.LampCurrent?.Milliamperes), ("wiring.tail_length_mm", town.Wiring.TailLength?.Millimetres),
            ("wiring.return_length_mm", town.Wiring.ReturnLength?.Millimetres),
        })
        {
            if (value is <= 0)
            {
                yield return new Problem(field, "size", $"{field} is {value}; more than 0 is allowed.", "Leave it out for the usual value.");
            }
        }

        foreach (var (field, value) in new (string, double?)[] { ("wiring.slack_mm", town.Wiring.Slack?.Millimetres), ("wiring.joint_resistance_ohm", town.Wiring.JointResistance?.Ohms) })
        {
            if (value is < 0)
            {
                yield return new Problem(field, "size", $"{field} is {value}; 0 or more is allowed.", "Leave it out for the usual value.");
            }
        }
    }
}
