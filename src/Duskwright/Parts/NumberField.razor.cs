using System.Globalization;
using Duskwright.Plan.Lists;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>A field for a number. What is typed stays as it is typed; what cannot be is said, and the last number that could be still holds.</summary>
public partial class NumberField
{
    private string _typed = "";
    private string? _refused;
    private double? _shown;

    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    /// <summary>The number; none where nobody has said it.</summary>
    [Parameter, EditorRequired]
    public double? Value { get; set; }

    [Parameter, EditorRequired]
    public double Least { get; set; }

    [Parameter, EditorRequired]
    public double Most { get; set; }

    [Parameter]
    public bool Whole { get; set; }

    /// <summary>Whether it is read only when it is left, so that a number half typed is no edit.</summary>
    [Parameter]
    public bool WhenLeft { get; set; }

    /// <summary>Whether it may be left empty.</summary>
    [Parameter]
    public bool MayBeEmpty { get; set; }

    /// <summary>Whether it is the second number of a ratio, which may be typed whole: 1:87.</summary>
    [Parameter]
    public bool Ratio { get; set; }

    /// <summary>Hears a number that will do; none where it was emptied and may be.</summary>
    [Parameter]
    public EventCallback<double?> Changed { get; set; }

    // The label ends in it: "Length of the pair, cm".
    private string? Unit => Label.LastIndexOf(", ", StringComparison.Ordinal) is > 0 and var comma ? Label[(comma + 2)..] : null;

    private string Id => $"refused-{string.Concat(Label.Where(char.IsLetter))}";

    private string Holds => WhenLeft ? $"It is still {(Value is null ? "not said" : Text(Value))}." : $"The answer is still for {Text(Value)}.";

    protected override void OnParametersSet()
    {
        if (_shown != Value)
        {
            (_shown, _typed, _refused) = (Value, Text(Value), null);
        }
    }

    private static string Text(double? value) => value?.ToString("0.######", CultureInfo.InvariantCulture) ?? "";

    private Task Type(ChangeEventArgs e) => WhenLeft ? Task.CompletedTask : Read(e);

    private Task Leave(ChangeEventArgs e) => WhenLeft ? Read(e) : Task.CompletedTask;

    private Task Read(ChangeEventArgs e)
    {
        _typed = e.Value?.ToString() ?? "";
        if (MayBeEmpty && _typed.Trim().Length == 0)
        {
            (_shown, _refused) = (null, null);
            return Changed.InvokeAsync(null);
        }

        if (NumberText.Read(Ratio && _typed.TrimStart().StartsWith("1:", StringComparison.Ordinal) ? _typed.TrimStart()[2..] : _typed, Unit) is { } number && number >= Least && number <= Most && (!Whole || double.IsInteger(number)))
        {
            (_shown, _refused) = (number, null);
            return Changed.InvokeAsync(number);
        }

        _refused = $"{(_typed.Length == 0 ? "A number is missing" : $"\"{_typed}\" will not do")}: {(Whole ? "a whole number" : "a number")} from {Text(Least)} to {Text(Most)} is allowed.";
        return Task.CompletedTask;
    }
}
