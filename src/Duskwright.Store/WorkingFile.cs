using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Format;
using Duskwright.Store.Bench;
using Duskwright.Store.Exchange;
using Duskwright.Store.History;
using Duskwright.Store.Opening;
using Duskwright.Store.Pictures;
using Microsoft.Data.Sqlite;

namespace Duskwright.Store;

/// <summary>A town's working file: the document, every state it has been in, pictures and bench entries, in one SQLite file.</summary>
/// <remarks>
/// What a method has acknowledged is on the disk. A method that gives problems has changed nothing, neither in the file nor here.
/// One at a time may have a file open to change it; not safe for several threads at once.
/// </remarks>
public sealed class WorkingFile : IDisposable
{
    /// <summary>The ending of a working file's name.</summary>
    public const string Ending = ".town";

    private readonly SqliteConnection _connection;
    private readonly WriterLock? _right;
    private readonly TimeProvider _clock;
    private SortedDictionary<string, string> _pieces;
    private bool _closed;

    internal WorkingFile(string? path, SqliteConnection connection, WriterLock? right, TimeProvider clock, Town? read = null)
    {
        (Path, _connection, _right, _clock) = (path, connection, right, clock);
        _pieces = HistoryTable.Pieces(connection);
        Town = read ?? Entities.Town(_pieces).Town!;
        Head = HistoryTable.Head(connection);
        Next = HistoryTable.Next(connection, Head.Id);
    }

    /// <summary>Where the file is, as a full path; none where the town is in memory only and has no file yet.</summary>
    public string? Path { get; }

    /// <summary>The town as it stands.</summary>
    public Town Town { get; private set; }

    /// <summary>The revision stood on: the edit that undo takes back, where it has a parent.</summary>
    public Revision Head { get; private set; }

    /// <summary>The revision that redo leads to; none where nothing was taken back.</summary>
    public Revision? Next { get; private set; }

    /// <summary>The named points in time, oldest first.</summary>
    public ItemList<NamedPoint> Points => PointTable.All(_connection);

    /// <summary>The pictures kept with the town, oldest first.</summary>
    public ItemList<Picture> Pictures => PictureTable.All(_connection);

    /// <summary>Everything ever entered from the bench, oldest first.</summary>
    public ItemList<BenchEntry> BenchEntries => BenchTable.All(_connection);

    /// <summary>Begins a working file that is not there yet.</summary>
    /// <param name="path">Where it is to be.</param>
    /// <param name="town">A town without problems.</param>
    /// <param name="label">How the history calls its beginning.</param>
    /// <param name="clock">The time.</param>
    /// <returns>The file, open; or why it could not be made.</returns>
    public static WorkingFileResult Create(string path, Town town, string label, TimeProvider clock) =>
        WorkingFileOpening.Create(System.IO.Path.GetFullPath(path), town, label, clock);

    /// <summary>Holds a town in memory, with its history, until it is given a file.</summary>
    /// <param name="town">A town without problems.</param>
    /// <param name="label">How the history calls its beginning.</param>
    /// <param name="clock">The time.</param>
    /// <returns>The town in hand; gone with the process.</returns>
    public static WorkingFile InMemory(Town town, string label, TimeProvider clock) => WorkingFileOpening.InMemory(town, label, clock);

    /// <summary>Opens a working file to change it. One of an older step is brought up to date, a copy of it kept beside.</summary>
    /// <param name="path">Where it is.</param>
    /// <param name="clock">The time.</param>
    /// <returns>The file, or why not; the file is then as it was.</returns>
    public static WorkingFileResult Open(string path, TimeProvider clock) =>
        WorkingFileOpening.Open(System.IO.Path.GetFullPath(path), clock);

    /// <summary>Reads the town in a working file, also while another is at work on it, and leaves no trace.</summary>
    /// <param name="path">Where it is.</param>
    /// <returns>The town, or every problem found.</returns>
    public static TownReadResult Read(string path) => WorkingFileOpening.Read(System.IO.Path.GetFullPath(path));

    /// <summary>Reads what a list of towns tells of a working file, also while another is at work on it, and leaves no trace.</summary>
    /// <param name="path">Where it is.</param>
    /// <returns>Its name and the number of its houses, or why it cannot be read.</returns>
    public static TownGlance Glance(string path) => WorkingFileOpening.Glance(System.IO.Path.GetFullPath(path));

    /// <summary>Takes in the town as an edit leaves it.</summary>
    /// <param name="town">The town after the edit, without problems.</param>
    /// <param name="label">What the edit did.</param>
    /// <returns>What kept it from being taken in.</returns>
    public ItemList<Problem> Change(Town town, string label) => Change(town, label, () => { });

    /// <summary>Takes in a town that was changed outside: nothing where that very file was taken in before, an edit where it was not.</summary>
    /// <param name="from">The file as it was read.</param>
    /// <returns>What kept it from being taken in.</returns>
    public ItemList<Problem> TakeIn(ExchangeFile from)
    {
        var name = System.IO.Path.GetFileName(from.Path);
        var mark = from.Mark;
        return OriginTable.Has(_connection, name, mark) ? []
            : from.Town == Town ? Write(() => OriginTable.Set(_connection, name, mark, _clock.GetUtcNow()))
            : Change(from.Town, $"Read {name}", () => OriginTable.Set(_connection, name, mark, _clock.GetUtcNow()));
    }

    /// <summary>Keeps the town, with all its history, in a file that is not there yet. This one is not changed by it.</summary>
    /// <param name="path">Where; the folder is made where it is not there.</param>
    /// <returns>The new file, open; or why it could not be made.</returns>
    public WorkingFileResult KeepAs(string path) => WorkingFileOpening.Copy(System.IO.Path.GetFullPath(path), _connection, _clock);

    /// <summary>Takes the last edit back.</summary>
    /// <returns>What kept it from being taken back; nothing happens where there is no edit.</returns>
    public ItemList<Problem> Undo() => Guarded(() =>
        Head.Parent is { } parent
            ? MoveTo(HistoryTable.Find(_connection, parent)!, [.. HistoryTable.Changes(_connection, Head.Id).Select(c => c.Reversed)])
            : []);

    /// <summary>Makes the edit last taken back again.</summary>
    /// <returns>What kept it from being made; nothing happens where none was taken back.</returns>
    public ItemList<Problem> Redo() => Guarded(() => Next is { } next ? MoveTo(next, HistoryTable.Changes(_connection, next.Id)) : []);

    /// <summary>The newest states the town has been in, undone ones among them.</summary>
    /// <param name="most">How many at most.</param>
    /// <returns>The revisions, newest first.</returns>
    public ItemList<Revision> Revisions(int most) => HistoryTable.Newest(_connection, most).ToItemList();

    /// <summary>Gives the town as it stands a name, or moves a name to it.</summary>
    /// <param name="name">The name, of one character at least.</param>
    /// <returns>What kept it from being named.</returns>
    public ItemList<Problem> NamePoint(string name) =>
        string.IsNullOrWhiteSpace(name)
            ? [new Problem("name", "no-name", "The point in time has no name.", "Call it what you will find it by.")]
            : Write(() => PointTable.Set(_connection, new NamedPoint(name.Trim(), Head.Id, _clock.GetUtcNow())));

    /// <summary>The town as it was.</summary>
    /// <param name="revision">A revision of this file.</param>
    /// <returns>The town.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such revision.</exception>
    public TownReadResult TownAt(long revision) =>
        PiecesAt(revision) is { } pieces ? Entities.Town(pieces) : new TownReadResult(null, [Refusal.Damaged(Called)]);

    /// <summary>What differs between two states.</summary>
    /// <param name="before">A revision of this file.</param>
    /// <param name="after">Another, older or newer.</param>
    /// <returns>The differences, down to the field.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such revision.</exception>
    public Comparison Compare(long before, long after) =>
        PiecesAt(before) is { } first && PiecesAt(after) is { } second
            ? new Comparison(Differences.Between(first, second), [])
            : new Comparison([], [Refusal.Damaged(Called)]);

    /// <summary>Keeps a picture with the town. It is no part of the document and not undone.</summary>
    /// <param name="name">What the maker calls it.</param>
    /// <param name="bytes">PNG or JPEG, at most 32 MB.</param>
    /// <returns>What kept it from being taken in; a picture that is there already is no problem.</returns>
    public ItemList<Problem> KeepPicture(string name, byte[] bytes) =>
        bytes.Length > PictureBytes.Most
            ? [new Problem(name, "too-large", $"{name} has {bytes.Length / 1048576} MB; at most {PictureBytes.Most / 1048576} MB is kept.", "Make it smaller first.")]
            : PictureBytes.MediaType(bytes) is not { } mediaType
                ? [new Problem(name, "not-a-picture", $"{name} is neither a PNG nor a JPEG picture.", "Save it as one of the two.")]
                : Write(() => PictureTable.Add(_connection, name, mediaType, bytes, _clock.GetUtcNow()));

    /// <summary>The bytes of a picture.</summary>
    /// <param name="id">Its id.</param>
    /// <returns>The bytes; none where there is no such picture.</returns>
    public byte[]? PictureOf(string id) => PictureTable.Bytes(_connection, id);

    /// <summary>Whether an entry of the bench has come already.</summary>
    /// <param name="key">The sender's mark.</param>
    /// <returns>Whether it has, also where it was undone since.</returns>
    public bool HasEntry(string key) => BenchTable.Has(_connection, key);

    /// <summary>Enters what was done, seen or read at the bench: once for each key, however often it is sent.</summary>
    /// <param name="key">The sender's mark of this entry; it becomes the entry's id.</param>
    /// <param name="entry">The entry.</param>
    /// <returns>What kept it from being entered.</returns>
    public ItemList<Problem> Enter(string key, LogEntry entry)
    {
        if (HasEntry(key))
        {
            return [];
        }

        var marked = entry with { Id = key };
        var town = new EnterInLog(marked).Apply(Town);
        var problems = TownChecks.Of(town);
        return problems.Count > 0
            ? problems
            : Change(town, $"Enter a {BenchTable.Words(entry.Kind)} of the bench", () => BenchTable.Add(_connection, new BenchEntry(key, marked, _clock.GetUtcNow())));
    }

    /// <summary>Says where the town is found in a browser, for whoever would open its file too.</summary>
    /// <param name="address">The address.</param>
    public void SayWhere(string address)
    {
        if (Path is not null && _right is not null)
        {
            Holder.Say(Path, _clock, address);
        }
    }

    /// <summary>Closes the file; another may then open it.</summary>
    public void Dispose()
    {
        if (_closed)
        {
            return;
        }

        _closed = true;
        _connection.Dispose();
        if (Path is not null && _right is not null)
        {
            Holder.Unsay(Path);
        }

        _right?.Dispose();
    }

    internal SqliteConnection Connection => _connection;

    private string Called => Path ?? Town.Name;

    private ItemList<Problem> Change(Town town, string label, Action beside)
    {
        var pieces = Entities.Of(town);
        var changes = EntityChange.Between(_pieces, pieces);
        Revision? made = null;
        var problems = Write(() =>
        {
            beside();
            made = HistoryTable.Add(_connection, Head.Id, label, _clock.GetUtcNow(), Entities.Mark(pieces), changes);
            HistoryTable.MoveHead(_connection, made.Id, changes);
        });
        if (problems.Count == 0)
        {
            (_pieces, Town, Head, Next) = (pieces, town, made!, null);
        }

        return problems;
    }

    private ItemList<Problem> MoveTo(Revision there, IReadOnlyList<EntityChange> changes)
    {
        var pieces = new SortedDictionary<string, string>(_pieces, StringComparer.Ordinal);
        foreach (var change in changes)
        {
            change.ApplyTo(pieces);
        }

        if (!HistoryTable.Mark(_connection, there.Id).AsSpan().SequenceEqual(Entities.Mark(pieces)))
        {
            return [Refusal.Damaged(Called)];
        }

        var read = Entities.Town(pieces);
        var problems = read.Town is null ? read.Problems : Write(() => HistoryTable.MoveHead(_connection, there.Id, changes));
        if (problems.Count == 0)
        {
            (_pieces, Town, Head, Next) = (pieces, read.Town!, there, HistoryTable.Next(_connection, there.Id));
        }

        return problems;
    }

    // None where what the history gives is not what was written.
    private SortedDictionary<string, string>? PiecesAt(long revision)
    {
        if (HistoryTable.Find(_connection, revision) is null)
        {
            throw new ArgumentOutOfRangeException(nameof(revision), revision, "The file has no such revision.");
        }

        var pieces = HistoryTable.At(_connection, _pieces, Head.Id, revision);
        return HistoryTable.Mark(_connection, revision).AsSpan().SequenceEqual(Entities.Mark(pieces)) ? pieces : null;
    }

    private ItemList<Problem> Write(Action work) => Guarded(() =>
    {
        using var transaction = _connection.BeginTransaction();
        work();
        transaction.Commit();
        return [];
    });

    private ItemList<Problem> Guarded(Func<ItemList<Problem>> work)
    {
        try
        {
            return work();
        }
        catch (SqliteException failed)
        {
            return [Refusal.From(Called, failed)];
        }
    }
}
