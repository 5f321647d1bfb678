using Duskwright.Plan.Document;
using Duskwright.Proposals;
using Duskwright.Proposals.Sharing;
using Duskwright.Study.Comparing;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>The houses shared anew over the packs as the maker wishes: better answers are shown as they come, and what would change is told before it is taken.</summary>
public sealed partial class ShareAnew
{
    private const int Most = 12;
    private SharingWishes _wishes = new();
    private CancellationTokenSource? _stop;
    private SharingProposal? _found;
    private Town? _of;
    private TownsCompared? _compared;
    private string? _wrong;

    [Inject]
    private OpenTown Open { get; set; } = default!;

    /// <inheritdoc/>
    public void Dispose()
    {
        _stop?.Cancel();
        _stop?.Dispose();
    }

    // What was worked out for another state of the town is not offered any more.
    protected override void OnParametersSet()
    {
        if (_stop is null && !ReferenceEquals(_of, Open.Town))
        {
            (_found, _compared) = (null, null);
        }
    }

    private static string Packs(SharingProposal found)
    {
        var packs = found.PacksUsed == 1 ? "One pack is enough" : $"{found.PacksUsed} packs are enough";
        return found.Proven ? $"{packs}, and no fewer will do." : $"{packs}; at the very least it takes {found.PacksAtLeast}.";
    }

    private async Task WorkOutAsync()
    {
        _stop = new CancellationTokenSource();
        (_found, _compared, _wrong, _of) = (null, null, null, Open.Town);
        var (study, town, wishes, cancel) = (Open.Study, Open.Town, _wishes, _stop.Token);
        try
        {
            _found = await Task.Run(() => SharingProposal.Of(town, StartingPlan.UsualPack(town), wishes, new Told(this), cancel));
            _compared = _found.Edit is { } edit ? await Task.Run(() => TownsCompared.Of(study, study.After(edit.Apply(town)))) : null;
        }
        finally
        {
            _stop.Dispose();
            _stop = null;
        }
    }

    private void Take()
    {
        var problems = Open.Apply(_found!.Edit!, told: true);
        _wrong = problems.Count == 0 ? null : $"{problems[0].Message} {problems[0].Remedy}";
        (_found, _compared) = problems.Count == 0 ? (null, null) : (_found, _compared);
    }

    private sealed class Told(ShareAnew page) : IProgress<SharingProposal>
    {
        public void Report(SharingProposal value) => _ = page.InvokeAsync(() =>
        {
            if (page._stop is not null)
            {
                page._found = value;
                page.StateHasChanged();
            }
        });
    }
}
