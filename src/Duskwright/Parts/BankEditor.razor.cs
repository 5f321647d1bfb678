using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Parts;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>Packs, switches and scenes, added, described and taken away; each change is an edit of its own.</summary>
public partial class BankEditor
{
    private const int UsualCells = 3;

    /// <summary>Whether it is open from the start.</summary>
    [Parameter]
    public bool Shown { get; set; }

    private Town Town => Open.Town;

    private IEnumerable<SupplyPart> Kinds => Catalogue.Parts.Supplies.Concat(Town.OwnParts.Supplies);

    private IEnumerable<FusePart> Fuses => Catalogue.Parts.Fuses.Concat(Town.OwnParts.Fuses);

    // Switches are labelled A to Z.
    private string? FreeSwitch => Enumerable.Range('A', 26).Select(c => ((char)c).ToString()).FirstOrDefault(id => Town.SwitchGroups.All(g => g.Id != id));

    private static string? Text(ChangeEventArgs e) => e.Value?.ToString()?.Trim() is { Length: > 0 } text ? text : null;

    private void Arrange(ItemList<Supply> supplies, ItemList<SwitchGroup> groups, ItemList<Scene> scenes, string words) => Do(new ArrangeBank(supplies, groups, scenes, words));

    private void Say(Supply pack) => Arrange(Town.Supplies.Select(s => s.Id == pack.Id ? pack : s).ToItemList(), Town.SwitchGroups, Town.Scenes, $"Change pack {1 + Town.Supplies.ToList().FindIndex(s => s.Id == pack.Id)}");

    private void Say(SwitchGroup group) => Arrange(Town.Supplies, Town.SwitchGroups.Select(g => g.Id == group.Id ? group : g).ToItemList(), Town.Scenes, $"Change switch {group.Id}");

    private void Say(int at, Scene scene) => Arrange(Town.Supplies, Town.SwitchGroups, Town.Scenes.With(at, scene), $"Change scene {scene.Name}");

    private void AddPack()
    {
        var id = Enumerable.Range(1, Town.Supplies.Count + 1).Select(n => n.ToString(CultureInfo.InvariantCulture)).First(n => Town.Supplies.All(s => s.Id != n));
        var like = Town.Supplies.Count > 0 ? Town.Supplies[^1] : new Supply { Id = id, Part = Catalogue.Parts.Supplies[0].Id, Series = UsualCells };
        Arrange(Town.Supplies.Add(like with { Id = id, Name = null, ChargeLeft = 1 }), Town.SwitchGroups, Town.Scenes, "One pack more");
    }

    private void AddSwitch() =>
        Arrange(Town.Supplies, Town.SwitchGroups.Add(new SwitchGroup { Id = FreeSwitch!, Supply = Town.Supplies.Count > 0 ? Town.Supplies[^1].Id : null }), Town.Scenes, $"One switch more: {FreeSwitch}");

    private void AddScene()
    {
        var name = Enumerable.Range(1, Town.Scenes.Count + 1).Select(n => string.Create(CultureInfo.InvariantCulture, $"scene {n}")).First(n => Town.Scenes.All(s => s.Name != n));
        Arrange(Town.Supplies, Town.SwitchGroups, Town.Scenes.Add(new Scene { Name = name, On = [Town.SwitchGroups[0].Id] }), "One scene more");
    }

    // Switches that took from it take from none until the maker says so.
    private void Remove(Supply pack) => Arrange(
        Town.Supplies.Where(s => s.Id != pack.Id).ToItemList(),
        Town.SwitchGroups.Select(g => g.Supply == pack.Id ? g with { Supply = null } : g).ToItemList(),
        Town.Scenes,
        $"A pack less: {pack.Name ?? pack.Id}");

    private void Remove(SwitchGroup group) => Arrange(
        Town.Supplies,
        Town.SwitchGroups.Where(g => g.Id != group.Id).ToItemList(),
        Town.Scenes.Select(s => s with { On = s.On.Where(o => o != group.Id).ToItemList() }).ToItemList(),
        $"A switch less: {group.Id}");

    private void RemoveScene(int at) => Arrange(Town.Supplies, Town.SwitchGroups, Town.Scenes.Without(at), $"A scene less: {Town.Scenes[at].Name}");

    private static ItemList<string> On(Scene scene, string group, bool on) => on ? scene.On.Add(group) : scene.On.Where(o => o != group).ToItemList();
}
