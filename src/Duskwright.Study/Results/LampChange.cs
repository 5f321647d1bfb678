using Duskwright.Light.Perception;
using Duskwright.Plan;
using Duskwright.Study.Operation;

namespace Duskwright.Study.Results;

/// <summary>How the fresh light of one lamp differs between two states of a town, all switches on.</summary>
/// <param name="Building">Its building's key.</param>
/// <param name="Lamp">Its name.</param>
/// <param name="LightShare">Its light afterwards over its light before, 1 where nothing changes.</param>
public sealed record LampChange(string Building, string Lamp, double LightShare)
{
    /// <summary>The step in lightness L* against the brighter of the two, below 0 where it has become fainter.</summary>
    public double Step => LightShare <= 1 ? Lightness.OfShare(LightShare) - 100 : 100 - Lightness.OfShare(1 / LightShare);

    internal static ItemList<LampChange> Between(CircuitResults before, CircuitResults after) => after.Lamps
        .Where(l => before.Lamps.ContainsKey(l.Key))
        .Select(l => (l.Key, Was: Light(before.Lamps[l.Key]), Is: Light(l.Value)))
        .Where(x => x.Was > 0)
        .Select(x => new LampChange(x.Key.Building, x.Key.Lamp, x.Is / x.Was))
        .ToItemList();

    private static double Light(LampPlace place)
    {
        var lamp = place.Run.Circuit.Lamps[place.Index];
        return lamp.Law.At(place.Run.BranchVolts(place.Index), lamp.Input.BranchOhms).Light;
    }
}
