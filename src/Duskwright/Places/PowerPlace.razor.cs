using Duskwright.Book.Diagrams;
using Duskwright.Book.Drawings;
using Duskwright.Study.Results;

namespace Duskwright.Places;

/// <summary>The bank, the packs, how they last and what each scene takes of them.</summary>
public partial class PowerPlace
{
    private bool _circuit;

    // Whoever sets out a first pack by hand goes on with its switches.
    private bool _wasEmpty;

    // What is worst is what the maker came for, until another pack is picked.
    private PackResult? Picked =>
        Open.Study.Packs.FirstOrDefault(p => View.At == $"pack:{p.Supply.Id}") ?? Open.Study.Packs.OrderBy(p => p.HoursToDim?.Value ?? double.MaxValue).FirstOrDefault();

    protected override void OnInitialized()
    {
        base.OnInitialized();
        _wasEmpty = Open.Study.Packs.Count == 0;
    }

    private IEnumerable<Drawing> Circuit(PackResult pack) => CircuitDiagram.Of(Open.Study).Where(c => c.Packs.Contains(pack.Number)).SelectMany(c => c.Pages);
}
