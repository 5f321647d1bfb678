using Duskwright.Plan.Document;
using Duskwright.Study.Results;

namespace Duskwright.Book.Diagrams;

/// <summary>One lamp's line of a circuit diagram, from its pack at the left to the common minus at the right.</summary>
/// <param name="Pack">The pack it takes from.</param>
/// <param name="Group">Its switch.</param>
/// <param name="House">Its building.</param>
/// <param name="Lamp">The lamp.</param>
/// <param name="Joints">Numbers of the joints before and after it.</param>
internal sealed record CircuitRow(PackResult Pack, SwitchGroup Group, BuildingResult House, LampResult Lamp, (int? Before, int After) Joints)
{
    /// <summary>Whether it is the first line of its pack, switch, building.</summary>
    internal (bool Pack, bool Group, bool House) First { get; init; }

    /// <summary>Whether it is the last line of its pack, building.</summary>
    internal (bool Pack, bool House) Last { get; init; }

    internal (string, string) HouseKey => (Group.Id, House.Building.Key);

    /// <summary>Room above its line, mm: names of building and pack stand there.</summary>
    internal double Above => (First.Pack ? 3 : 0) + (First.House ? 13 : 5);

    /// <summary>Room below its line, mm; below a pack of one lamp stands what the pack is.</summary>
    internal double Below => First.Pack && Last.Pack ? 12 : Last.House ? 5 : 4;
}
