using Duskwright.Study.Figures;
using Duskwright.Study.Results;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>What parts as they are sold make of a pack. It is slow to compute: the page does not wait for it.</summary>
public partial class SpreadNotes
{
    private SpreadResult? _spread;
    private PackResult? _of;

    [Parameter, EditorRequired]
    public PackResult Pack { get; set; } = default!;

    [Inject]
    private OpenTown Open { get; set; } = default!;

    // Another pack's spread is not this one's of before.
    private SpreadResult? Shown => _spread?.Supply == Pack.Supply.Id ? _spread : null;

    private bool Behind => !ReferenceEquals(_of, Pack);

    protected override async Task OnParametersSetAsync()
    {
        var (pack, study) = (Pack, Open.Study);
        if (ReferenceEquals(pack, _of))
        {
            return;
        }

        var spread = await Task.Run(() => study.Spread(pack.Supply.Id));
        if (ReferenceEquals(pack, Pack))
        {
            (_spread, _of) = (spread, pack);
        }
    }

    private static string Ends(Figure figure) => FigureText.Range(figure) ?? FigureText.Of(figure);

    private string NameOf(string building) => Open.Study.Buildings.First(b => b.Building.Key == building).Building.Name;
}
