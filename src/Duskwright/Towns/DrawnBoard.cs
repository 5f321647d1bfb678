using Duskwright.Book.Drawings;
using Duskwright.Book.Plans;
using Duskwright.Study;

namespace Duskwright.Towns;

/// <summary>The board as it was last drawn. A page asks for the same drawing several times over while a change comes in, and the page that opens asks for it first before and then after it answers to the hand.</summary>
internal sealed class DrawnBoard
{
    private readonly Lock _gate = new();
    private (TownStudy Study, double Hour, double? RoomLux, BoardView View)? _asked;
    private Lazy<Drawing>? _drawn;

    /// <summary>Draws it, unless that was what was last drawn.</summary>
    /// <param name="study">The town's results; its town must have a board.</param>
    /// <param name="hour">Hours burnt.</param>
    /// <param name="roomLux">Light in the room, lx; none to leave open what reads as lit.</param>
    /// <param name="view">What else it shows.</param>
    /// <returns>The drawing.</returns>
    internal Drawing Of(TownStudy study, double hour, double? roomLux, BoardView view)
    {
        var asked = (study, hour, roomLux, view);
        Lazy<Drawing> drawn;
        lock (_gate)
        {
            if (_drawn is null || asked != _asked)
            {
                (_asked, _drawn) = (asked, new(() => BoardPlan.Of(study, study.At(hour, roomLux), view)));
            }

            drawn = _drawn;
        }

        return drawn.Value;
    }
}
