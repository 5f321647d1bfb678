using System.Globalization;
using Duskwright.Plan.Lists;
using Duskwright.Plan.Quantities;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>A field for a length, read when it is left; what will not do stays as it is typed and is told why.</summary>
public partial class LengthField
{
    private string _typed = "";
    private string? _refused;
    private (bool Shown, Length? Value) _was;

    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    /// <summary>The length; none where nobody has said it.</summary>
    [Parameter, EditorRequired]
    public Length? Value { get; set; }

    /// <summary>Whether it may be left empty.</summary>
    [Parameter]
    public bool MayBeEmpty { get; set; }

    /// <summary>Hears a length that will do.</summary>
    [Parameter]
    public EventCallback<Length?> Changed { get; set; }

    protected override void OnParametersSet()
    {
        if (!_was.Shown || _was.Value != Value)
        {
            (_was, _typed, _refused) = ((true, Value), Value is { } l ? $"{l.Millimetres.ToString("0.#", CultureInfo.InvariantCulture)} mm" : "", null);
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

        if (LengthText.Read(_typed, "mm") is { Length: var length })
        {
            _refused = null;
            return Changed.InvokeAsync(length);
        }

        _refused = $"{Label}: {(_typed.Length == 0 ? "nothing was typed" : $"“{_typed}” will not do")}; a length like 47, 4.7 cm or 1 3/4 in is allowed.";
        return Task.CompletedTask;
    }
}
