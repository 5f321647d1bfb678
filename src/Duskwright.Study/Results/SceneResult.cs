using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Results;

/// <summary>What a scene does: its switches on together and all others off.</summary>
/// <param name="Scene">The scene.</param>
/// <param name="Lamps">How many lamps it lights.</param>
/// <param name="Buildings">The names of the buildings it lights, in the order of the document.</param>
/// <param name="Packs">Each supply it takes from, in the order of the document.</param>
/// <param name="Unfed">Switches of the scene that light nothing, because they take from no supply or no lamp hangs on them.</param>
public sealed record SceneResult(Scene Scene, int Lamps, ItemList<string> Buildings, ItemList<ScenePack> Packs, ItemList<string> Unfed);

/// <summary>What one supply does in a scene. Its cells begin as they are at the start of the show and light this scene alone.</summary>
public sealed record ScenePack
{
    /// <summary>The supply's id.</summary>
    public required string Supply { get; init; }

    /// <summary>Its place among the supplies, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>The switches of the scene that take from it.</summary>
    public required ItemList<string> SwitchGroups { get; init; }

    /// <summary>How many lamps it lights in the scene.</summary>
    public required int Lamps { get; init; }

    /// <summary>Its current at the start, A.</summary>
    public required Figure Load { get; init; }

    /// <summary>Hours until the worst lamp of the scene is dim; none where it never is.</summary>
    public Figure? HoursToDim { get; init; }

    /// <summary>Hours until the worst lamp of the scene is spoiled; none where it never is.</summary>
    public Figure? HoursToSpoiled { get; init; }

    /// <summary>The lamp that has lost most of its own light by the end of the show, had the scene run all through it; none where none loses any.</summary>
    public WorstLamp? Worst { get; init; }
}

/// <summary>The worst lamp of a pack in a scene.</summary>
/// <param name="Building">The name of its building.</param>
/// <param name="Lamp">Its name within the building.</param>
/// <param name="Lightness">Its light at the end of the show against its own at the start, L*.</param>
public sealed record WorstLamp(string Building, string Lamp, Figure Lightness);
