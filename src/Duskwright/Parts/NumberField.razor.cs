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

    [Parameter, EditorRequired]
    public double Value { get; set; }

    [Parameter, EditorRequired]
    public double Least { get; set; }

    [Parameter, EditorRequired]
    public double Most { get; set; }

    [Parameter]
    public bool Whole { get; set; }

    /// <summary>Whether it is read only when it is left, so that a number half typed is no edit.</summary>
    [Parameter]
    public bool WhenLeft { get; set; }

    [Parameter]
    public EventCallback<double> Changed { get; set; }

    // The label ends in it: "Length of the pair, cm".
    private string? Unit => Label.LastIndexOf(", ", StringComparison.Ordinal) is > 0 and var comma ? Label[(comma + 2)..] : null;

    private string Id => $"refused-{string.Concat(Label.Where(char.IsLetter))}";

    protected override void OnParametersSet()
    {
        if (_shown != Value)
        {
            (_shown, _typed, _refused) = (Value, Text(Value), null);
        }
    }

    private static string Text(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);

    private Task Type(ChangeEventArgs e) => WhenLeft ? Task.CompletedTask : Read(e);

    private Task Leave(ChangeEventArgs e) => WhenLeft ? Read(e) : Task.CompletedTask;

    private Task Read(ChangeEventArgs e)
    {
        _typed = e.Value?.ToString() ?? "";
        if (NumberText.Read(_typed, Unit) is { } number && number >= Least && number <= Most && (!Whole || double.IsInteger(number)))
        {
            (_shown, _refused) = (number, null);
            return Changed.InvokeAsync(number);
        }

        _refused = $"{(_typed.Length == 0 ? "A number is missing" : $"\"{_typed}\" will not do")}: {(Whole ? "a whole number" : "a number")} from {Text(Least)} to {Text(Most)} is allowed.";
        return Task.CompletedTask;
    }
}
