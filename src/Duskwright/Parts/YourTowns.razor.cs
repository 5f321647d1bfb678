using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Serve;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>The maker's other towns: each is turned to, or opened beside this one at an address of its own.</summary>
public sealed partial class YourTowns
{
    private const int Few = 4;
    private ItemList<Problem> _problems = [];

    /// <summary>Whether all are listed, with all that can be done; else the last few.</summary>
    [Parameter]
    public bool Whole { get; set; }

    /// <summary>What they are called.</summary>
    [Parameter]
    public string Heading { get; set; } = "Your towns";

    /// <summary>Hears that this page now shows another town.</summary>
    [Parameter]
    public EventCallback Turned { get; set; }

    [Inject]
    private OpenTown Open { get; set; } = default!;

    [Inject]
    private IServiceProvider Services { get; set; } = default!;

    // None on a phone in the house, which has this one town.
    private OpenTowns? Towns { get; set; }

    private ItemList<(OpenTown Town, string Address)> Beside => Towns?.Beside(Open) ?? [];

    private ItemList<KeptTown> Others => Open.Kept.Where(t => t.Path != Open.FilePath && Towns?.AddressOf(t.Path) is null).ToItemList();

    /// <inheritdoc/>
    public void Dispose()
    {
        if (Towns is { } towns)
        {
            towns.Changed -= Redraw;
        }
    }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        Towns = Services.GetService<OpenTowns>();
        if (Towns is { } towns)
        {
            towns.Changed += Redraw;
        }
    }

    private async Task Turn(KeptTown town)
    {
        if (Open.TurnTo(town.Path).Count == 0)
        {
            await Turned.InvokeAsync();
        }
    }

    private async Task OpenAsync(KeptTown town) => _problems = (await Towns!.OpenAsync(town.Path)).Problems;

    private Task CloseAsync(string address) => Towns!.CloseAsync(address);

    private void Redraw() => _ = InvokeAsync(StateHasChanged);
}
