using Duskwright.Plan.Document;

namespace Duskwright.Plan.Checks;

/// <summary>When the maker works at the bench.</summary>
internal static class CalendarChecks
{
    private const int MostHands = 20;
    private const int MostDryingPlaces = 1000;
    private const int MinutesPerDay = 24 * 60;

    internal static IEnumerable<Problem> Of(Town town)
    {
        if (town.Calendar is not { } calendar)
        {
            yield break;
        }

        if (calendar.Hands is < 1 or > MostHands)
        {
            yield return new Problem("calendar.hands", "hands", $"There are {calendar.Hands} pairs of hands; 1 to {MostHands} are allowed.", "Write how many people work at once.");
        }

        if (calendar.DryingPlaces is < 1 or > MostDryingPlaces)
        {
            yield return new Problem("calendar.drying_places", "drying_places", $"There are {calendar.DryingPlaces} places to dry; 1 to {MostDryingPlaces} are allowed.", "Write how many buildings can stand and dry at once, or leave it out.");
        }

        for (var i = 0; i < calendar.Sessions.Count; i++)
        {
            var session = calendar.Sessions[i];
            if (session.Minutes <= 0 || Begin(session) + session.Minutes > MinutesPerDay)
            {
                yield return new Problem($"calendar.sessions[{i}].minutes", "session", $"The session on {session.Day} lasts {session.Minutes} min; more than 0, ending by midnight, is allowed.", "Shorten it, or begin earlier.");
            }

            if (calendar.Sessions.Take(i).Any(o => o.Day == session.Day && Begin(o) < Begin(session) + session.Minutes && Begin(session) < Begin(o) + o.Minutes))
            {
                yield return new Problem($"calendar.sessions[{i}]", "session", $"Two sessions on {session.Day} overlap.", "Make them one, or move one of them.");
            }
        }

        for (var i = 0; i < calendar.Steps.Count; i++)
        {
            if (calendar.Steps[i].Minutes < 0)
            {
                yield return new Problem($"calendar.steps[{i}].minutes", "minutes", $"The step {calendar.Steps[i].Step} of {calendar.Steps[i].Building} takes {calendar.Steps[i].Minutes} min; 0 or more is allowed.", "Plan the calendar again.");
            }
        }
    }

    private static int Begin(WeeklySession session) => (int)session.From.ToTimeSpan().TotalMinutes;
}
