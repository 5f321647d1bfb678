using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Proposals;
using Duskwright.Store;
using Duskwright.Study;

namespace Duskwright.Towns;

/// <summary>What all who have the town open share: its file, its results, and what kept a change from being made.</summary>
internal sealed class Desk(WorkingFile file, string? home)
{
    private static readonly TimeSpan DrawnFirst = TimeSpan.FromMilliseconds(100);
    private bool _settling;
    private string? _address;

    internal event Action? Changed;

    internal Lock Gate { get; } = new();

    internal string? Home { get; } = home;

    internal TownShelf? Shelf { get; } = home is null ? null : new TownShelf(home);

    internal WorkingFile File { get; private set; } = file;

    internal TownStudy Study { get; private set; } = TownStudy.Of(file.Town);

    internal Lazy<RouteProposal> Routes { get; private set; } = Suggested(file.Town);

    internal DrawnBoard Board { get; } = new();

    internal ItemList<Problem> Trouble { get; set; } = [];

    internal LengthRule Lengths { get; set; } = LengthRule.KeptIn(home);

    internal TownStudy? Settled { get; private set; }

    internal void Tell() => Changed?.Invoke();

    /// <summary>Takes the file's town as the one to be studied; every answer that still holds is kept.</summary>
    internal void Follow() => (Study, Routes) = (Study.After(File.Town), Suggested(File.Town));

    /// <summary>Hears where the town is found in a browser; its file tells it to whoever would open it too.</summary>
    internal void StandsAt(string address)
    {
        _address = address;
        SayWhere(File);
    }

    /// <summary>Turns to another file.</summary>
    /// <returns>No problems.</returns>
    internal ItemList<Problem> TurnTo(WorkingFile file)
    {
        File.Dispose();
        File = file;
        SayWhere(file);
        return [];
    }

    /// <summary>Puts a town that is in memory into a file of its own.</summary>
    internal void GiveFile() => File = WithFile(File);

    /// <summary>The same town in a file of its own, where it may have one. One that cannot be given a file is worked on in memory, and the maker told.</summary>
    internal WorkingFile WithFile(WorkingFile file)
    {
        if (file.Path is not null || Home is null)
        {
            return file;
        }

        var kept = file.KeepAs(TownFolder.FreePath(Home, file.Town.Name));
        if (kept.File is null)
        {
            Trouble = kept.Problems;
            return file;
        }

        file.Dispose();
        SayWhere(kept.File);
        return kept.File;
    }

    /// <summary>Puts a file among the maker's towns; it is worked on whether or not that can be kept.</summary>
    internal void Remember(WorkingFile file)
    {
        try
        {
            if (Home is { } home && file.Path is { } path)
            {
                RememberedTowns.Remember(home, path);
            }
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            Trouble = [new Problem("", "not-remembered", $"The town is open; it could not be put among your towns: {refused.Message}", "Look at the folder of your towns.")];
        }
    }

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

    private void SayWhere(WorkingFile file)
    {
        if (_address is { } address)
        {
            file.SayWhere(address);
        }
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
