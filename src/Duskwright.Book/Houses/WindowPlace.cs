using Duskwright.Plan.Document;

namespace Duskwright.Book.Houses;

/// <summary>Where a window is drawn on its wall, seen from outside, mm.</summary>
/// <param name="Storey">Its storey, counted from 0 at the ground.</param>
/// <param name="Room">Its room, counted from 0 in the storey.</param>
/// <param name="Index">Which of the room's windows, counted from 0.</param>
/// <param name="Window">The window.</param>
/// <param name="LeftMillimetres">From the wall's left end to its left edge.</param>
/// <param name="SillMillimetres">From the storey's floor to its lower edge.</param>
/// <param name="LeastMillimetres">Where its room's share of the wall begins.</param>
/// <param name="MostMillimetres">Where its room's share of the wall ends.</param>
/// <param name="CeilingMillimetres">The storey's height.</param>
public sealed record WindowPlace(int Storey, int Room, int Index, Window Window, double LeftMillimetres, double SillMillimetres, double LeastMillimetres, double MostMillimetres, double CeilingMillimetres);
