using Duskwright.Store.History;
using Duskwright.Study;
using Duskwright.Study.Comparing;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>Moments of the town with a name: kept, gone back to, and two of them compared in words.</summary>
public partial class PointsInTime
{
    // What a screen shows before it says "and more".
    private const int Most = 40;

    private string _name = "";
    private string _from = "";
    private string _to = "";
    private string? _said;
    private string _between = "";
    private TownsCompared? _compared;

    [Inject]
    private OpenTown Open { get; set; } = default!;

    protected override void OnParametersSet()
    {
        if (_from.Length == 0)
        {
            _from = Open.Points is [var first, ..] ? first.Name : "";
        }
    }

    private void Name()
    {
        var name = _name;
        _said = Open.NamePoint(name).Count == 0 ? $"You can come back to {name}." : null;
        _name = "";
        OnParametersSet();
    }

    private void GoBack(NamedPoint point)
    {
        _said = Open.GoBackTo(point).Count == 0 ? $"The town is as it was at {point.Name}. Undo takes that back." : null;
        _compared = null;
    }

    // Two whole towns with all that is worth saying of each: the page does not wait for it.
    private async Task CompareAsync(string from, string? to)
    {
        (_said, _compared) = ("The two are being compared.", null);
        StateHasChanged();
        var until = string.IsNullOrEmpty(to) ? Open.Study : StudyAt(to);
        if (StudyAt(from) is { } before && until is not null)
        {
            _compared = await Task.Run(() => TownsCompared.Of(before, until));
            (_said, _between) = (null, string.IsNullOrEmpty(to) ? $"Changed since {from}" : $"Changed from {from} to {to}");
        }
        else
        {
            _said = "One of the two cannot be read from the file any more.";
        }
    }

    private TownStudy? StudyAt(string name) => Open.Points.FirstOrDefault(p => p.Name == name) is { } point && Open.Then(point) is { } town ? Open.Study.After(town) : null;
}
