using Duskwright.Study.Results;

namespace Duskwright.Book.Houses;

/// <summary>The numbers of a building's joints: 1 and 2 where its pair arrives, plus and minus; then lamp by lamp, one between resistor and lamp, one on the lamp's way back.</summary>
internal static class JointNumbers
{
    internal const int Plus = 1;
    internal const int Minus = 2;

    /// <summary>The joints of each lamp, in their order; none before the lamp where it has no resistor.</summary>
    internal static IReadOnlyList<(int? Before, int After)> Of(IEnumerable<LampResult> lamps)
    {
        var joint = Minus + 1;
        var numbers = new List<(int?, int)>();
        foreach (var lamp in lamps)
        {
            int? before = lamp.Resistor.Value > 0 ? joint++ : null;
            numbers.Add((before, joint++));
        }

        return numbers;
    }
}
