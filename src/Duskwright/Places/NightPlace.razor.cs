namespace Duskwright.Places;

/// <summary>The town in the light of a room: which packs fade, and which windows still read as lit.</summary>
public partial class NightPlace
{
    // Half of a window's fresh light, CIE L*.
    private const double DimLightness = 76;

    private string Headline => Moment.Packs.OrderBy(p => p.WorstLightness).FirstOrDefault() is { WorstLightness: < DimLightness } p
        ? $"Pack {Open.Study.Packs.First(x => x.Supply.Id == p.Supply).Number} is fading"
        : "All packs hold at this hour";

    private string Told
    {
        get
        {
            var known = Moment.Lamps.Where(l => l.ReadsAsLit is not null).ToList();
            var lost = known.Count(l => l.ReadsAsLit == false);
            return known.Count == 0 ? "no window is described yet, so only the fading is shown."
                : lost == 0 ? "every described pane reads as lit."
                : $"{lost} of {known.Count} lamps with a described pane no longer read as lit. Darken the room, or give them more current.";
        }
    }
}
