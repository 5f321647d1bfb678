using Duskwright.Plan.Quantities;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>A field for a length, read when it is left; what will not do stays as it is typed and is told why.</summary>
public partial class LengthField
{
    // Two fields of a page may have the same name.
    private readonly string _id = $"refused-{Guid.NewGuid():N}";
    private string _typed = "";
    private string? _refused;
    private ElementReference _input;
    private (LengthRule? Rule, Length? Value) _was;

    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    /// <summary>The length; none where nobody has said it.</summary>
    [Parameter, EditorRequired]
    public Length? Value { get; set; }

    /// <summary>What it is shown and typed in; the maker's own unit where none is said.</summary>
    [Parameter]
    public LengthRule? Rule { get; set; }

    /// <summary>Whether it may be left empty.</summary>
    [Parameter]
    public bool MayBeEmpty { get; set; }

    /// <summary>Hears a length that will do.</summary>
    [Parameter]
    public EventCallback<Length?> Changed { get; set; }

    [Inject]
    private OpenTown Open { get; set; } = default!;

    /// <summary>Puts the cursor into it.</summary>
    public ValueTask FocusAsync() => _input.FocusAsync();

    private LengthRule Shown => Rule ?? Open.Lengths;

    protected override void OnParametersSet()
    {
        if (_was.Rule != Shown || _was.Value != Value)
        {
            (_was, _typed, _refused) = ((Shown, Value), Shown.Words(Value), null);
        }
    }

    private Task Read(ChangeEventArgs e)
    {
        _typed = (e.Value?.ToString() ?? "").Trim();
        if (_typed.Length == 0 && MayBeEmpty)
        {
            _refused = null;
            return Changed.InvokeAsync(null);
        }

        if (Shown.Read(_typed) is { } length)
        {
            _refused = null;
            return Changed.InvokeAsync(length);
        }

        _refused = $"{Label}: {(_typed.Length == 0 ? "nothing was typed" : $"“{_typed}” will not do")}; {Shown.Example} is allowed.";
        return Task.CompletedTask;
    }
}
