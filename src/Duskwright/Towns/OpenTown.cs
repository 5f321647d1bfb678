using System.Security.Cryptography;
using Duskwright.Book.Drawings;
using Duskwright.Book.Plans;
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
    private readonly Desk _desk;
    private Task? _firstWork;
    private readonly bool _lookOnly;
    private ItemList<Problem> _refused = [];

    private OpenTown(WorkingFile file, string? home) => _desk = new Desk(file, home);

    private OpenTown(Desk desk) => (_desk, _lookOnly) = (desk, true);

    /// <summary>Raised after every change, on the thread that made it.</summary>
    public event Action? Changed
    {
        add => _desk.Changed += value;
        remove => _desk.Changed -= value;
    }

    /// <summary>The town as it stands.</summary>
    public Town Town => Study.Town;

    /// <summary>Everything computed for it.</summary>
    public TownStudy Study => _desk.Study;

    /// <summary>The results whose slower part is worked out too, of the town as it was a change or two ago while the newer are still to come; none just after opening.</summary>
    public TownStudy? Settled => _desk.Settled;

    /// <summary>Whether the slower part of the results has caught up with the town.</summary>
    public bool IsSettled => ReferenceEquals(Settled, Study);

    /// <summary>Routes that could be taken for the buildings that have none.</summary>
    public RouteProposal SuggestedRoutes => _desk.Routes.Value;

    /// <summary>Whether what the first page shows is still being worked out.</summary>
    public bool IsBeingOpened => _firstWork is { IsCompleted: false };

    /// <summary>The board as it stands, which must be there.</summary>
    /// <param name="hour">Hours burnt.</param>
    /// <param name="roomLux">Light in the room, lx; none to leave open what reads as lit, before the light of the rooms is known.</param>
    /// <param name="view">What else it shows.</param>
    /// <returns>The drawing.</returns>
    public Drawing Board(double hour, double? roomLux, BoardView view) => _desk.Board.Of(Study, hour, roomLux, view);

    /// <summary>Whether it may be looked at and not changed from here.</summary>
    public bool IsToLookAt => _lookOnly;

    /// <summary>What kept the last change from being made or kept; empty once one has been.</summary>
    public ItemList<Problem> Trouble => _lookOnly ? _refused : _desk.Trouble;

    /// <summary>The label of the edit that undo takes back; none where there is none.</summary>
    public string? UndoLabel => _desk.File.Head.Parent is null ? null : _desk.File.Head.Label;

    /// <summary>The label of the edit that redo makes again; none where there is none.</summary>
    public string? RedoLabel => _desk.File.Next?.Label;

    /// <summary>The file's name; none while the town is in memory only.</summary>
    public string? FileName => _desk.File.Path is { } path ? Path.GetFileNameWithoutExtension(path) : null;

    /// <summary>Where the file lies; none while the town is in memory only.</summary>
    public string? FilePath => _desk.File.Path;

    /// <summary>The folder of the maker's towns; none while nothing is kept.</summary>
    internal string? Home => _desk.Home;

    /// <summary>A name for downloads.</summary>
    public string FileStem => FileName ?? Slug.Of(Town.Name);

    /// <summary>The maker's own towns, last changed first; those that cannot be read among them.</summary>
    public ItemList<KeptTown> Kept => _desk.Shelf?.Towns() ?? [];

    /// <summary>The named points in time, oldest first.</summary>
    public ItemList<NamedPoint> Points
    {
        get
        {
            lock (_desk.Gate)
            {
                return _desk.File.Points;
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
        if (opened.File is not { } own)
        {
            return (null, opened.Problems);
        }

        // What the first page shows is worked out while the program and the browser are still starting.
        var town = new OpenTown(own, home);
        town._desk.Remember(own);
        town._firstWork = Task.Run(() => town.Town.Board is null ? (object)town.Study.Buildings : town.Board(0, null, new BoardView()));
        return (town, []);
    }

    /// <summary>Makes an edit that can be undone.</summary>
    /// <param name="edit">The edit.</param>
    /// <param name="told">Whether whoever asks for it says beside the field what stands against it, so that it is not said a second time over the page.</param>
    /// <returns>The problems the edited town would have, or what kept it from being kept; the town is then left as it was.</returns>
    public ItemList<Problem> Apply(TownEdit edit, bool told = false) => Do(() => Made(edit), told: told);

    /// <summary>Says something else of a building. What another tab has said of it meanwhile is kept.</summary>
    /// <param name="key">The building's key.</param>
    /// <param name="change">What is said of it.</param>
    /// <param name="label">What undo will call it.</param>
    /// <param name="told">Whether whoever asks tells what stands against it.</param>
    /// <returns>What stands against it.</returns>
    public ItemList<Problem> Change(string key, Func<Building, Building> change, string label, bool told = true) =>
        Do(() => Town.Buildings.FirstOrDefault(b => b.Key == key) is { } now
            ? Made(new ChangeBuildings([change(now)], label))
            : [new Problem("buildings", "gone", "The house has been taken away elsewhere meanwhile.", "Undo brings it back.")], told: told);

    /// <summary>Enters what was done, seen or read at the bench: once for each key, however often it is sent.</summary>
    /// <param name="key">The sender's mark.</param>
    /// <param name="read">Makes the entry for the town as it stands, or tells in a sentence why there is none.</param>
    /// <param name="photograph">The picture that goes with it; none for most.</param>
    /// <returns>What kept it from being entered; nothing where it was entered before.</returns>
    public ItemList<Problem> Enter(string key, Func<TownStudy, (LogEntry? Entry, string? Why)> read, byte[]? photograph = null) => Do(() =>
    {
        if (_desk.File.HasEntry(key))
        {
            return [];
        }

        var (entry, why) = read(Study);
        if (entry is null)
        {
            return [new Problem("log", "bench", why!, "")];
        }

        _desk.GiveFile();
        var unkept = photograph is null ? [] : _desk.File.KeepPicture("The photograph", photograph);
        return unkept.Count > 0 ? unkept : _desk.File.Enter(key, entry);
    }, quiet: true);

    /// <summary>Keeps a picture in the town's file; it is no part of what undo takes back.</summary>
    /// <param name="name">What the maker calls it.</param>
    /// <param name="bytes">PNG or JPEG.</param>
    /// <returns>Its id, and what kept it from being kept.</returns>
    public (string Id, ItemList<Problem> Problems) KeepPicture(string name, byte[] bytes)
    {
        var problems = Do(() =>
        {
            _desk.GiveFile();
            return _desk.File.KeepPicture(name, bytes);
        }, told: true);
        return (Convert.ToHexStringLower(SHA256.HashData(bytes)), problems);
    }

    /// <summary>Whether a picture is in the town's file.</summary>
    /// <param name="id">Its id.</param>
    /// <returns>Whether it is.</returns>
    public bool HasPicture(string id)
    {
        lock (_desk.Gate)
        {
            return _desk.File.Pictures.Any(p => p.Id == id);
        }
    }

    /// <summary>A picture kept with the town.</summary>
    /// <param name="id">Its id.</param>
    /// <returns>Its bytes and what they are; none where there is no such picture.</returns>
    public (byte[] Bytes, string MediaType)? Picture(string id)
    {
        lock (_desk.Gate)
        {
            return _desk.File.Pictures.FirstOrDefault(p => p.Id == id) is { } kept && _desk.File.PictureOf(id) is { } bytes ? (bytes, kept.MediaType) : null;
        }
    }

    /// <summary>Says the whole town anew, as an edit that can be undone.</summary>
    /// <param name="town">A town without problems.</param>
    /// <param name="label">What undo will call it.</param>
    /// <returns>What kept it from being kept.</returns>
    public ItemList<Problem> Replace(Town town, string label) => Do(() => Change(town, label));

    /// <summary>Begins another town in a file of its own; this one stays in its file.</summary>
    /// <param name="town">A town without problems.</param>
    /// <returns>What kept it from being begun.</returns>
    public ItemList<Problem> Begin(Town town) => Do(() => _desk.TurnTo(_desk.WithFile(InMemory(town))));

    /// <summary>Turns to another town's file.</summary>
    /// <param name="path">The file.</param>
    /// <returns>What kept it from being opened; this town then stays open.</returns>
    public ItemList<Problem> TurnTo(string path) => Do(() =>
    {
        var opened = TownFile.Open(path, TimeProvider.System);
        if (opened.File is not { } file)
        {
            return opened.Problems;
        }

        _desk.Remember(file);
        return _desk.TurnTo(file);
    });

    /// <summary>Turns to a town that came with the program; its first change begins a file of the maker's own.</summary>
    /// <param name="example">The town.</param>
    /// <returns>What kept it from being opened; this town then stays open.</returns>
    public ItemList<Problem> TurnTo(ExampleTown example) => Do(() => _desk.TurnTo(InMemory(example.Town)));

    /// <summary>Turns to a town as it stands in a file that another has open; the first change begins a file of the maker's own.</summary>
    /// <param name="path">The file.</param>
    /// <returns>What kept it from being read; this town then stays open.</returns>
    public ItemList<Problem> TurnToCopyOf(string path) => Do(() =>
    {
        var read = TownFile.Read(path);
        return read.Town is { } town ? _desk.TurnTo(InMemory(town)) : read.Problems;
    });

    /// <summary>Hears where this town is found in a browser; its file tells it to whoever would open it too.</summary>
    /// <param name="address">The address.</param>
    public void StandsAt(string address)
    {
        lock (_desk.Gate)
        {
            _desk.StandsAt(address);
        }
    }

    /// <summary>Takes the last edit back.</summary>
    public void Undo() => Do(() => _desk.File.Undo());

    /// <summary>Makes the last edit taken back again.</summary>
    public void Redo() => Do(() => _desk.File.Redo());

    /// <summary>The unit in which the maker measures.</summary>
    public LengthRule Lengths => _desk.Lengths;

    /// <summary>Measures in another unit from now on, in every town.</summary>
    /// <param name="rule">The unit.</param>
    public void MeasureIn(LengthRule rule) => Do(() =>
    {
        _desk.Lengths = rule;
        try
        {
            if (_desk.Home is { } home)
            {
                rule.KeepIn(home);
            }

            return [];
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            return [new Problem("", "not-remembered", $"The unit serves until the program ends; it could not be kept: {refused.Message}", "Look at the folder of your towns.")];
        }
    });

    /// <summary>Gives the town as it stands a name to come back to.</summary>
    /// <param name="name">The name.</param>
    /// <returns>What kept it from being named.</returns>
    public ItemList<Problem> NamePoint(string name) => Do(() => _desk.File.NamePoint(name));

    /// <summary>Goes back to a named point, as an edit that can be undone.</summary>
    /// <param name="point">The point.</param>
    /// <returns>What kept it from being gone back to.</returns>
    public ItemList<Problem> GoBackTo(NamedPoint point) => Do(() =>
    {
        var then = _desk.File.TownAt(point.Revision);
        return then.Town is { } town ? Change(town, $"Go back to {point.Name}") : then.Problems;
    });

    /// <summary>The town as it was at a named point.</summary>
    /// <param name="point">The point.</param>
    /// <returns>The town; none where its history cannot be read.</returns>
    public Town? Then(NamedPoint point)
    {
        lock (_desk.Gate)
        {
            return _desk.File.TownAt(point.Revision).Town;
        }
    }

    /// <summary>What has changed since a named point.</summary>
    /// <param name="point">The point.</param>
    /// <returns>The differences from it to the town as it stands.</returns>
    public Comparison Since(NamedPoint point)
    {
        lock (_desk.Gate)
        {
            return _desk.File.Compare(point.Revision, _desk.File.Head.Id);
        }
    }

    /// <summary>Works the slower part of the results out beside the editing, the newest town next; all are told when it is done.</summary>
    public void Settle() => _desk.Settle();

    /// <summary>Forgets what kept a change from being made by somebody who may only look: they have gone on.</summary>
    public void GoOn() => _refused = [];

    /// <summary>Forgets what kept the last change from being made: it has been read.</summary>
    public void Heard()
    {
        _refused = [];
        if (!_lookOnly)
        {
            _desk.Trouble = [];
        }

        _desk.Tell();
    }

    /// <summary>The same town for somebody who may look at it and change nothing.</summary>
    /// <returns>A town that follows this one and refuses every change.</returns>
    public OpenTown ToLookAt() => new(_desk);

    /// <summary>Closes the file.</summary>
    public void Dispose()
    {
        if (!_lookOnly)
        {
            _desk.File.Dispose();
        }
    }

    private static WorkingFile InMemory(Town town) => WorkingFile.InMemory(town, "Begin", TimeProvider.System);

    // What is refused at the bench is told to its sender, not to whoever looks at the town meanwhile.
    private ItemList<Problem> Do(Func<ItemList<Problem>> work, bool quiet = false, bool told = false)
    {
        if (_lookOnly)
        {
            _refused = [new Problem("", "look-only", "From here the town may be looked at and not changed.", "At the desk, let this device in to change it.")];
            _desk.Tell();
            return _refused;
        }

        ItemList<Problem> problems;
        lock (_desk.Gate)
        {
            _desk.Trouble = quiet ? _desk.Trouble : [];
            problems = work();
            if (problems.Count > 0)
            {
                _desk.Trouble = quiet || told ? _desk.Trouble : problems;
            }
            else if (!ReferenceEquals(_desk.File.Town, Town))
            {
                _desk.Follow();
            }
        }

        _desk.Tell();
        return problems;
    }

    private ItemList<Problem> Made(TownEdit edit)
    {
        var edited = edit.Apply(Town);
        var problems = edit.Problems(Town) is { Count: > 0 } against ? against : TownChecks.Of(edited);
        return problems.Count > 0 ? problems : Change(edited, edit.Label);
    }

    private ItemList<Problem> Change(Town town, string label)
    {
        _desk.GiveFile();
        return _desk.File.Change(town, label);
    }
}
