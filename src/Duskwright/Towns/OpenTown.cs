using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Proposals;
using Duskwright.Store;
using Duskwright.Store.Exchange;
using Duskwright.Store.History;
using Duskwright.Study;

namespace Duskwright.Towns;

/// <summary>The town that is open in this process: every tab sees the same, edits follow one another, and each is kept in the town's file before it is seen.</summary>
public sealed class OpenTown : IDisposable
{
    private readonly Lock _gate = new();
    private readonly string? _home;
    private WorkingFile _file;
    private Lazy<RouteProposal> _routes;

    private OpenTown(WorkingFile file, string? home)
    {
        (_file, _home) = (file, home);
        Study = TownStudy.Of(file.Town);
        _routes = Suggested(file.Town);
    }

    /// <summary>Raised after every change, on the thread that made it.</summary>
    public event Action? Changed;

    /// <summary>The town as it stands.</summary>
    public Town Town => Study.Town;

    /// <summary>Everything computed for it.</summary>
    public TownStudy Study { get; private set; }

    /// <summary>Routes that could be taken for the buildings that have none.</summary>
    public RouteProposal SuggestedRoutes => _routes.Value;

    /// <summary>What kept the last change from being made or kept; empty once one has been.</summary>
    public ItemList<Problem> Trouble { get; private set; } = [];

    /// <summary>The label of the edit that undo takes back; none where there is none.</summary>
    public string? UndoLabel => _file.Head.Parent is null ? null : _file.Head.Label;

    /// <summary>The label of the edit that redo makes again; none where there is none.</summary>
    public string? RedoLabel => _file.Next?.Label;

    /// <summary>The file's name; none while the town is in memory only.</summary>
    public string? FileName => _file.Path is { } path ? Path.GetFileNameWithoutExtension(path) : null;

    /// <summary>Where the file lies; none while the town is in memory only.</summary>
    public string? FilePath => _file.Path;

    /// <summary>A name for downloads.</summary>
    public string FileStem => FileName ?? Slug.Of(Town.Name);

    /// <summary>The maker's own towns, newest first.</summary>
    public ItemList<KeptTown> Kept => _home is null ? [] : TownFolder.In(_home);

    /// <summary>The named points in time, oldest first.</summary>
    public ItemList<NamedPoint> Points
    {
        get
        {
            lock (_gate)
            {
                return _file.Points;
            }
        }
    }

    /// <summary>Opens a file, or the demo town when none is named. The demo's file, or one in the exchange form, is never written to.</summary>
    /// <param name="path">The file, or none.</param>
    /// <param name="home">The folder in which a town without a file gets one at its first change; none to hold it in memory.</param>
    /// <returns>The open town, or every problem found.</returns>
    public static (OpenTown? Town, ItemList<Problem> Problems) FromFile(string? path, string? home = null)
    {
        if (path is null)
        {
            var demo = ExchangeFile.Open(Path.Combine(AppContext.BaseDirectory, "examples", "saltmarrow.json"));
            return demo.File is { } file ? (new OpenTown(InMemory(file.Town), home), []) : (null, demo.Problems);
        }

        var opened = TownFile.Open(path, TimeProvider.System);
        return opened.File is { } own ? (new OpenTown(own, home), []) : (null, opened.Problems);
    }

    /// <summary>Makes an edit that can be undone.</summary>
    /// <param name="edit">The edit.</param>
    /// <returns>The problems the edited town would have, or what kept it from being kept; the town is then left as it was.</returns>
    public ItemList<Problem> Apply(TownEdit edit) => Do(() =>
    {
        var edited = edit.Apply(Town);
        var problems = edit.Problems(Town) is { Count: > 0 } against ? against : TownChecks.Of(edited);
        return problems.Count > 0 ? problems : Change(edited, edit.Label);
    });

    /// <summary>Says the whole town anew, as an edit that can be undone.</summary>
    /// <param name="town">A town without problems.</param>
    /// <param name="label">What undo will call it.</param>
    /// <returns>What kept it from being kept.</returns>
    public ItemList<Problem> Replace(Town town, string label) => Do(() => Change(town, label));

    /// <summary>Begins another town in a file of its own; this one stays in its file.</summary>
    /// <param name="town">A town without problems.</param>
    /// <returns>What kept it from being begun.</returns>
    public ItemList<Problem> Begin(Town town) => Do(() => Turn(WithFile(InMemory(town))));

    /// <summary>Turns to another town's file.</summary>
    /// <param name="path">The file.</param>
    /// <returns>What kept it from being opened; this town then stays open.</returns>
    public ItemList<Problem> TurnTo(string path) => Do(() =>
    {
        var opened = TownFile.Open(path, TimeProvider.System);
        return opened.File is { } file ? Turn(file) : opened.Problems;
    });

    /// <summary>Takes the last edit back.</summary>
    public void Undo() => Do(() => _file.Undo());

    /// <summary>Makes the last edit taken back again.</summary>
    public void Redo() => Do(() => _file.Redo());

    /// <summary>Gives the town as it stands a name to come back to.</summary>
    /// <param name="name">The name.</param>
    /// <returns>What kept it from being named.</returns>
    public ItemList<Problem> NamePoint(string name) => Do(() => _file.NamePoint(name));

    /// <summary>Goes back to a named point, as an edit that can be undone.</summary>
    /// <param name="point">The point.</param>
    /// <returns>What kept it from being gone back to.</returns>
    public ItemList<Problem> GoBackTo(NamedPoint point) => Do(() =>
    {
        var then = _file.TownAt(point.Revision);
        return then.Town is { } town ? Change(town, $"Go back to {point.Name}") : then.Problems;
    });

    /// <summary>The town as it was at a named point.</summary>
    /// <param name="point">The point.</param>
    /// <returns>The town; none where its history cannot be read.</returns>
    public Town? Then(NamedPoint point)
    {
        lock (_gate)
        {
            return _file.TownAt(point.Revision).Town;
        }
    }

    /// <summary>What has changed since a named point.</summary>
    /// <param name="point">The point.</param>
    /// <returns>The differences from it to the town as it stands.</returns>
    public Comparison Since(NamedPoint point)
    {
        lock (_gate)
        {
            return _file.Compare(point.Revision, _file.Head.Id);
        }
    }

    /// <summary>Closes the file.</summary>
    public void Dispose() => _file.Dispose();

    private static WorkingFile InMemory(Town town) => WorkingFile.InMemory(town, "Begin", TimeProvider.System);

    private static Lazy<RouteProposal> Suggested(Town town) => new(() => RouteProposal.Of(town));

    private ItemList<Problem> Do(Func<ItemList<Problem>> work)
    {
        ItemList<Problem> problems;
        lock (_gate)
        {
            Trouble = [];
            problems = work();
            if (problems.Count > 0)
            {
                Trouble = problems;
            }
            else if (!ReferenceEquals(_file.Town, Town))
            {
                Study = Study.After(_file.Town);
                _routes = Suggested(_file.Town);
            }
        }

        Changed?.Invoke();
        return problems;
    }

    private ItemList<Problem> Change(Town town, string label)
    {
        _file = WithFile(_file);
        return _file.Change(town, label);
    }

    private ItemList<Problem> Turn(WorkingFile file)
    {
        _file.Dispose();
        _file = file;
        return [];
    }

    // A town that cannot be given a file is worked on in memory, and the maker told.
    private WorkingFile WithFile(WorkingFile file)
    {
        if (file.Path is not null || _home is null)
        {
            return file;
        }

        var kept = file.KeepAs(TownFolder.FreePath(_home, file.Town.Name));
        Trouble = kept.Problems;
        if (kept.File is null)
        {
            return file;
        }

        file.Dispose();
        return kept.File;
    }
}
