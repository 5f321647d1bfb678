using System.Globalization;
using Duskwright.Plan.Lists;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>A shallow arc with a small lamp as hand; a slider for keyboard and screen readers, and a field for a typed number.</summary>
public partial class Dial
{
    private const double Left = 18;
    private const double Breadth = 424;
    private bool _refused;

    [Parameter, EditorRequired]
    public string Label { get; set; } = "";

    [Parameter, EditorRequired]
    public double Value { get; set; }

    [Parameter, EditorRequired]
    public double Least { get; set; }

    [Parameter, EditorRequired]
    public double Most { get; set; }

    [Parameter, EditorRequired]
    public double Step { get; set; }

    [Parameter, EditorRequired]
    public IReadOnlyList<Tick> Ticks { get; set; } = [];

    [Parameter]
    public IReadOnlyList<Tick> Flags { get; set; } = [];

    [Parameter, EditorRequired]
    public string Words { get; set; } = "";

    [Parameter]
    public string After { get; set; } = "";

    /// <summary>The value as it is typed, where the arc has another scale.</summary>
    [Parameter, EditorRequired]
    public double Number { get; set; }

    [Parameter]
    public EventCallback<double> Changed { get; set; }

    [Parameter]
    public EventCallback<double> Typed { get; set; }

    private static string N(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string X(double share) => N(Left + (Breadth * share));

    private static string Y(double share, double below = 0) => N(50 - (64 * share * (1 - share)) + below);

    private static string Arc(double from, double to) =>
        "M" + string.Join("L", Enumerable.Range(0, 25).Select(i => from + ((to - from) * i / 24)).Select(s => $"{X(s)} {Y(s)}"));

    private double Share(double value) => Math.Clamp((value - Least) / (Most - Least), 0, 1);

    private Task OnMoved(ChangeEventArgs e) => Read(e, Changed);

    private Task OnTyped(ChangeEventArgs e) => Read(e, Typed);

    // What is no number stays as it is typed, marked, and the dial where it is.
    private Task Read(ChangeEventArgs e, EventCallback<double> told)
    {
        var number = NumberText.Read(e.Value?.ToString() ?? "");
        _refused = number is null;
        return number is { } value ? told.InvokeAsync(value) : Task.CompletedTask;
    }
}
