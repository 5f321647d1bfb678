using Duskwright.Book.Diagrams;
using Duskwright.Book.Drawings;
using Duskwright.Study.Results;

namespace Duskwright.Places;

/// <summary>The bank, the packs, how they last and what each scene takes of them.</summary>
public partial class PowerPlace
{
    private bool _circuit;

    // What is worst is what the maker came for, until another pack is picked.
    private PackResult? Picked =>
        Open.Study.Packs.FirstOrDefault(p => View.At == $"pack:{p.Supply.Id}") ?? Open.Study.Packs.OrderBy(p => p.HoursToDim?.Value ?? double.MaxValue).FirstOrDefault();

    private IEnumerable<Drawing> Circuit(PackResult pack) => CircuitDiagram.Of(Open.Study).Where(c => c.Packs.Contains(pack.Number)).SelectMany(c => c.Pages);
}
