using System.Globalization;
using Duskwright.Book.Drawings;

namespace Duskwright.Book.Houses;

/// <summary>A lamp of a drawing that is worked on by hand: it can be chosen and moved.</summary>
internal static class LampInHand
{
    // What a finger still hits, mm of the house.
    internal const double Reach = 4.5;

    /// <summary>The lamp where the drawing has it.</summary>
    /// <param name="room">Its room.</param>
    /// <param name="index">Which of the room's lamps, from 0.</param>
    /// <param name="at">Where, in the drawing's millimetres.</param>
    /// <param name="where">Where it is in the house, in words.</param>
    /// <param name="chosen">The key of what is chosen.</param>
    /// <param name="pen">Size of lettering against that of the page.</param>
    /// <returns>The part, with its key <c>lamp:0/0/0</c>.</returns>
    internal static Part Of(RoomPlan room, int index, (double X, double Y) at, string where, string? chosen, double pen)
    {
        var key = string.Create(CultureInfo.InvariantCulture, $"lamp:{room.Storey}/{room.Index}/{index}");
        var name = room.Lamps[index].Lamp.Name;
        return new Part(
        [
            new Stroke(Trace.Circle(at.X, at.Y, Reach), Inks.Touch),
            .. HouseElevation.LampAt(at.X, at.Y, name, pen),
            .. key == chosen ? (Mark[])[new Stroke(Trace.Circle(at.X, at.Y, Reach - 1), Inks.Ring)] : [],
        ])
        {
            Key = key,
            Chosen = key == chosen,
            Words = $"{name}, {where}",
        };
    }
}
