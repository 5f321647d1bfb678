using System.Globalization;
using Duskwright.Book.Drawings;
using Duskwright.Book.Plans;
using Duskwright.Plan;
using Duskwright.Proposals;
using Duskwright.Study;
using Duskwright.Study.Lists;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>The order of laying, step by step on the board; it moves only when it is asked to.</summary>
public partial class LayingFilm : IDisposable
{
    private static readonly TimeSpan OneStep = TimeSpan.FromSeconds(0.9);
    private readonly CancellationTokenSource _gone = new();
    private ItemList<Plan.Document.Route> _wires = [];
    private int _step;
    private bool _playing;

    [Parameter, EditorRequired]
    public TownStudy Study { get; set; } = default!;

    private LayingList Laying => Study.Laying;

    private string Words => _step == 0
        ? $"Before the first of {Laying.Rows.Count} steps: what is glued stands."
        : Laying.Rows[_step - 1] is var row ? $"Step {row.Number} of {Laying.Rows.Count}. {row.Do}{(row.Because.Length > 0 ? $": {row.Because}" : "")}." : "";

    private Drawing Drawn
    {
        get
        {
            var (standing, pulled) = Laying.After(_step);
            return BoardPlan.Of(Study, Study.At(0), new BoardView
            {
                Standing = standing,
                Instead = _wires.Where(w => pulled.Contains(w.Building)).ToItemList(),
                Taps = pulled,
                Chosen = _step > 0 ? Laying.Rows[_step - 1].Building : null,
            });
        }
    }

    public void Dispose()
    {
        _gone.Cancel();
        _gone.Dispose();
        GC.SuppressFinalize(this);
    }

    // The town's own routes, and suggested ones where it has none yet.
    protected override void OnParametersSet()
    {
        var own = Study.Town.Routes.Select(r => r.Building).ToHashSet(StringComparer.Ordinal);
        _wires = Study.Town.Routes.Concat(RouteProposal.Of(Study.Town).Edit.Routes.Where(r => !own.Contains(r.Building))).ToItemList();
        _step = Math.Min(_step, Laying.Rows.Count);
    }

    private void Turn(int step)
    {
        _playing = false;
        _step = Math.Clamp(step, 0, Laying.Rows.Count);
    }

    private void Turned(ChangeEventArgs e)
    {
        if (int.TryParse(e.Value?.ToString(), NumberStyles.Integer, CultureInfo.InvariantCulture, out var step))
        {
            Turn(step);
        }
    }

    private async Task Play()
    {
        _playing = !_playing;
        var cancel = _gone.Token;
        if (_playing && _step == Laying.Rows.Count)
        {
            _step = 0;
        }

        while (_playing && _step < Laying.Rows.Count)
        {
            StateHasChanged();
            await Task.Delay(OneStep, cancel).ContinueWith(_ => { }, TaskScheduler.Default);
            if (cancel.IsCancellationRequested)
            {
                return;
            }

            _step = _playing ? _step + 1 : _step;
        }

        _playing = false;
    }
}
