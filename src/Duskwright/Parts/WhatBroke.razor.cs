using System.Globalization;
using Duskwright.Study.Mending;
using Duskwright.Study.Results;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>The maker says which lamps of a pack are dark or dim; what may have broken is told beside it.</summary>
public partial class WhatBroke
{
    private const int Shown = 5;
    private const double LeastShare = 0.005;
    private const double MostMilliamperes = 100_000;

    private readonly Dictionary<(string Building, string Lamp), Seen> _looks = [];
    private string _reading = "";

    [Parameter, EditorRequired]
    public PackResult Pack { get; set; } = default!;

    [Inject]
    private OpenTown Open { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    private FaultAnswer? Answer => _looks.Values.All(l => l == Seen.Lit) && Amperes is null ? null : Open.Study.WhatBroke(new FaultQuestion(Pack.Supply.Id, _looks, Amperes));

    private double? Amperes =>
        double.TryParse(_reading.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var milliamperes) && Math.Abs(milliamperes) <= MostMilliamperes ? milliamperes / 1000 : null;

    private string? ReadingSaid => _reading.Trim().Length > 0 && Amperes is null ? $"“{_reading}” is not a current; write milliamperes, 163 or 16,5." : null;

    private static string Chance(double share) => share >= 0.995 ? "Almost certainly" : string.Create(CultureInfo.InvariantCulture, $"{Math.Max(1, share * 100):0} in 100:");

    private static string Word(Seen seen) => seen switch { Seen.Dark => "dark", Seen.Dim => "dim", Seen.Unknown => "cannot see it", _ => "lit" };

    private Seen Look(LampResult lamp) => _looks.GetValueOrDefault((lamp.Building, lamp.Name), Seen.Lit);

    private void Turn(LampResult lamp) => _looks[(lamp.Building, lamp.Name)] = Look(lamp) switch { Seen.Lit => Seen.Dark, Seen.Dark => Seen.Dim, Seen.Dim => Seen.Unknown, _ => Seen.Lit };

    private void Clear()
    {
        _looks.Clear();
        _reading = "";
    }
}
