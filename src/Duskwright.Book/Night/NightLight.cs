using Duskwright.Plan;

namespace Duskwright.Book.Night;

/// <summary>Luminance of every pane of a scene at hours of the show, with some switches off.</summary>
/// <param name="Hours">The hours, the first 0, the last the end of the show.</param>
/// <param name="Luminance">cd/m² by pane, then by hour.</param>
public sealed record NightLight(ItemList<double> Hours, ItemList<float> Luminance)
{
    private const int Steps = 24;

    /// <summary>Computes it; what is off takes no current, so the rest burns as it then would.</summary>
    /// <param name="scene">The scene.</param>
    /// <param name="off">Switch groups that are off.</param>
    /// <returns>The table.</returns>
    public static NightLight Of(NightScene scene, IReadOnlySet<string> off)
    {
        var lit = scene.Study;
        var switched = off.Count == 0 ? lit : lit.After(lit.Town with { SwitchGroups = lit.Town.SwitchGroups.Select(g => off.Contains(g.Id) ? g with { Supply = null } : g).ToItemList() });
        var hours = Enumerable.Range(0, Steps + 1).Select(i => lit.Town.Show.HoursPerDay.Hours * i / Steps).ToItemList();
        var places = scene.Panes.Select((p, i) => (Key: (p.Building, p.Storey, p.Room, p.Window), i)).ToDictionary(x => x.Key, x => x.i);
        var table = new float[scene.Panes.Count * hours.Count];
        for (var h = 0; h < hours.Count; h++)
        {
            foreach (var pane in switched.At(hours[h]).Panes)
            {
                if (places.TryGetValue((pane.Building, pane.Storey, pane.Room, pane.Window), out var place))
                {
                    table[(place * hours.Count) + h] = (float)pane.Luminance;
                }
            }
        }

        return new NightLight(hours, table.ToItemList());
    }

    /// <summary>Luminance of a pane at an hour, straight between two.</summary>
    /// <param name="pane">Place of the pane.</param>
    /// <param name="hour">Hours burnt.</param>
    /// <returns>cd/m².</returns>
    public float At(int pane, double hour)
    {
        var place = Hours[^1] > 0 ? Math.Clamp(hour / Hours[^1], 0, 1) * (Hours.Count - 1) : 0;
        var (before, after) = ((int)Math.Floor(place), (int)Math.Ceiling(place));
        var (one, other) = (Luminance[(pane * Hours.Count) + before], Luminance[(pane * Hours.Count) + after]);
        return one + ((other - one) * (float)(place - before));
    }
}
