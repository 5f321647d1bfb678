namespace Duskwright.Book.Houses;

/// <summary>Where a lamp is drawn in its room, mm.</summary>
/// <param name="Storey">Its storey, counted from 0 at the ground.</param>
/// <param name="Room">Its room, counted from 0 in the storey.</param>
/// <param name="Index">Which of the room's lamps, counted from 0.</param>
/// <param name="Name">Its name in the building: L1.</param>
/// <param name="FromLeftMillimetres">From the room's left wall.</param>
/// <param name="AboveFloorMillimetres">Above the floor.</param>
/// <param name="FromFrontMillimetres">From the room's front wall.</param>
/// <param name="WidthMillimetres">The room's width.</param>
/// <param name="DepthMillimetres">The room's depth.</param>
/// <param name="HeightMillimetres">The room's height.</param>
public sealed record LampSpot(int Storey, int Room, int Index, string Name, double FromLeftMillimetres, double AboveFloorMillimetres, double FromFrontMillimetres, double WidthMillimetres, double DepthMillimetres, double HeightMillimetres);
