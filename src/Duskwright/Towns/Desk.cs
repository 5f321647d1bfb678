using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Proposals;
using Duskwright.Store;
using Duskwright.Study;

namespace Duskwright.Towns;

/// <summary>What all who have the town open share.</summary>
internal sealed class Desk(WorkingFile file, string? home)
{
    private static readonly TimeSpan DrawnFirst = TimeSpan.FromMilliseconds(100);
    private bool _settling;

    internal event Action? Changed;

    internal Lock Gate { get; } = new();

    internal string? Home { get; } = home;

    internal TownShelf? Shelf { get; } = home is null ? null : new TownShelf(home);

    internal string? Address { get; set; }

    internal WorkingFile File { get; set; } = file;

    internal TownStudy Study { get; private set; } = TownStudy.Of(file.Town);

    internal Lazy<RouteProposal> Routes { get; private set; } = Suggested(file.Town);

    internal ItemList<Problem> Trouble { get; set; } = [];

    internal LengthRule Lengths { get; set; } = LengthRule.KeptIn(home);

    internal TownStudy? Settled { get; private set; }

    internal void Tell() => Changed?.Invoke();

    /// <summary>Takes the file's town as the one to be studied; every answer that still holds is kept.</summary>
    internal void Follow() => (Study, Routes) = (Study.After(File.Town), Suggested(File.Town));

    internal void Settle()
    {
        lock (Gate)
        {
            if (_settling || ReferenceEquals(Settled, Study))
            {
                return;
            }

            _settling = true;
        }

        _ = SettleAllAsync();
    }

    // What cannot be worked out throws again where it is asked for, on the page of whoever asks.
    private async Task SettleAllAsync()
    {
        // What the hand has just done is drawn first: it shares the machine with its own picture.
        await Task.Delay(DrawnFirst).ConfigureAwait(ConfigureAwaitOptions.ForceYielding);
        var (study, routes) = (Study, Routes);
        try
        {
            _ = (study.Findings, routes.Value);
        }
        finally
        {
            bool newer;
            lock (Gate)
            {
                (Settled, _settling) = (study, false);
                newer = !ReferenceEquals(study, Study);
            }

            Tell();
            if (newer)
            {
                Settle();
            }
        }
    }

    private static Lazy<RouteProposal> Suggested(Town town) => new(() => RouteProposal.Of(town));
}
