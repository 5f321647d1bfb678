using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>Which room of a building.</summary>
/// <param name="Storey">The storey, counted from 0 at the ground.</param>
/// <param name="Room">The room, counted from 0 in the storey.</param>
public readonly record struct RoomAt(int Storey, int Room)
{
    /// <summary>The room, where the building has it.</summary>
    /// <param name="building">The building.</param>
    /// <returns>The room; none where it has been taken away.</returns>
    public Room? In(Building building) =>
        Storey >= 0 && Storey < building.Storeys.Count && Room >= 0 && Room < building.Storeys[Storey].Rooms.Count ? building.Storeys[Storey].Rooms[Room] : null;

    /// <summary>The building with this room said anew.</summary>
    /// <param name="building">The building.</param>
    /// <param name="room">The room as it is to be; none takes it away.</param>
    /// <returns>The building; as it was where it has no such room.</returns>
    public Building With(Building building, Room? room)
    {
        if (In(building) is null)
        {
            return building;
        }

        var storey = building.Storeys[Storey];
        var rooms = room is null ? storey.Rooms.Without(Room) : storey.Rooms.With(Room, room);
        return building with { Storeys = building.Storeys.With(Storey, storey with { Rooms = rooms }) };
    }
}
