using Duskwright.Study.Results;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>What a scene does, in words: its switches, and for each pack the current, the hours and the lamp that fades first.</summary>
public partial class SceneNotes
{
    [Parameter, EditorRequired]
    public SceneResult Scene { get; set; } = default!;

    private string Lit => Scene.Lamps == 0
        ? "It lights nothing."
        : $"{Switches(Scene.Packs.SelectMany(p => p.SwitchGroups))} {(Scene.Packs.Sum(p => p.SwitchGroups.Count) == 1 ? "lights" : "light")} {Counted(Scene.Lamps, "LED")} in {Counted(Scene.Buildings.Count, "building")}.";

    private string Dark => $"{Switches(Scene.Unfed)} {(Scene.Unfed.Count == 1 ? "lights" : "light")} nothing: give {(Scene.Unfed.Count == 1 ? "it" : "each")} a pack and lamps, or leave {(Scene.Unfed.Count == 1 ? "it" : "them")} out of the scene.";

    private static string Switches(IEnumerable<string> ids)
    {
        var all = ids.ToList();
        return all.Count == 1 ? $"Switch {all[0]}" : $"Switches {string.Join(", ", all.SkipLast(1))} and {all[^1]}";
    }

    private static string Counted(int count, string what) => count == 1 ? $"1 {what}" : $"{count} {what}s";
}
