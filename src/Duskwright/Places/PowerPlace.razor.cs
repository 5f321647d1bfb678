using Duskwright.Study.Results;

namespace Duskwright.Places;

/// <summary>The bank, the packs, how they last and what each scene takes of them.</summary>
public partial class PowerPlace
{
    // What is worst is what the maker came for, until another pack is picked.
    private PackResult? Picked =>
        Open.Study.Packs.FirstOrDefault(p => View.At == $"pack:{p.Supply.Id}") ?? Open.Study.Packs.OrderBy(p => p.HoursToDim?.Value ?? double.MaxValue).FirstOrDefault();
}
