using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Serve;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>Opens the town to a phone in the house, shows the code that lets it in, and shuts it again.</summary>
public sealed partial class LetPhoneIn
{
    private ItemList<Problem> _problems = [];

    /// <summary>The way in.</summary>
    [Parameter, EditorRequired]
    public PhoneDoor Door { get; set; } = default!;

    /// <inheritdoc/>
    public void Dispose() => Door.Changed -= Redraw;

    /// <inheritdoc/>
    protected override void OnInitialized() => Door.Changed += Redraw;

    private async Task OpenAsync(bool lookOnly) => _problems = await Door.OpenAsync(lookOnly);

    private void Redraw() => _ = InvokeAsync(StateHasChanged);
}
