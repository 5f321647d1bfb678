using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Proposals;
using Duskwright.Store.Exchange;
using Duskwright.Study;

namespace Duskwright.Towns;

/// <summary>The town that is open in this process: every tab sees the same, and edits follow one another.</summary>
public sealed class OpenTown
{
    private readonly Lock _gate = new();
    private readonly Stack<(Town Before, string Label)> _undo = new();
    private readonly Stack<(Town After, string Label)> _redo = new();
    private ExchangeFile? _file;
    private Lazy<RouteProposal> _routes;

    /// <summary>Opens a town that has no file yet.</summary>
    /// <param name="town">A town without problems.</param>
    public OpenTown(Town town)
        : this(town, null)
    {
    }

    private OpenTown(Town town, ExchangeFile? file)
    {
        _file = file;
        Study = TownStudy.Of(town);
        _routes = Suggested(town);
    }

    /// <summary>Raised after every change, on the thread that made it.</summary>
    public event Action? Changed;

    /// <summary>The town as it stands.</summary>
    public Town Town => Study.Town;

    /// <summary>Everything computed for it.</summary>
    public TownStudy Study { get; private set; }

    /// <summary>Routes that could be taken for the buildings that have none.</summary>
    public RouteProposal SuggestedRoutes => _routes.Value;

    /// <summary>The label of the edit that undo takes back; none where there is none.</summary>
    public string? UndoLabel => _undo.TryPeek(out var top) ? top.Label : null;

    /// <summary>The label of the edit that redo makes again; none where there is none.</summary>
    public string? RedoLabel => _redo.TryPeek(out var top) ? top.Label : null;

    /// <summary>The file's name; none where the town has not been saved yet.</summary>
    public string? FileName => _file is { } file ? Path.GetFileNameWithoutExtension(file.Path) : null;

    /// <summary>Whether the file holds the town as it stands.</summary>
    public bool IsSaved => _file is { } file && file.Town == Town;

    /// <summary>A name for downloads.</summary>
    public string FileStem => FileName ?? Slug.Of(Town.Name);

    /// <summary>Opens a file, or the demo town when none is named. The demo's file is never written to.</summary>
    /// <param name="path">The file, or none.</param>
    /// <returns>The open town, or every problem found.</returns>
    public static (OpenTown? Town, ItemList<Problem> Problems) FromFile(string? path)
    {
        var result = ExchangeFile.Open(path ?? Path.Combine(AppContext.BaseDirectory, "examples", "saltmarrow.json"));
        return result.File is { } file ? (new OpenTown(file.Town, path is null ? null : file), []) : (null, result.Problems);
    }

    /// <summary>Makes an edit that can be undone.</summary>
    /// <param name="edit">The edit.</param>
    /// <returns>The problems the edited town would have; the town is then left as it was.</returns>
    public ItemList<Problem> Apply(TownEdit edit)
    {
        lock (_gate)
        {
            var edited = edit.Apply(Town);
            var problems = TownChecks.Of(edited).ToItemList();
            if (problems.Count > 0)
            {
                return problems;
            }

            _undo.Push((Town, edit.Label));
            _redo.Clear();
            Show(edited);
        }

        Changed?.Invoke();
        return [];
    }

    /// <summary>Puts another town in place of this one, as an edit that can be undone.</summary>
    /// <param name="town">A town without problems.</param>
    /// <param name="label">What undo will call it.</param>
    public void Replace(Town town, string label)
    {
        lock (_gate)
        {
            _undo.Push((Town, label));
            _redo.Clear();
            _file = null;
            Show(town);
        }

        Changed?.Invoke();
    }

    /// <summary>Takes the last edit back.</summary>
    public void Undo()
    {
        lock (_gate)
        {
            if (!_undo.TryPop(out var last))
            {
                return;
            }

            _redo.Push((Town, last.Label));
            Show(last.Before);
        }

        Changed?.Invoke();
    }

    /// <summary>Makes the last edit taken back again.</summary>
    public void Redo()
    {
        lock (_gate)
        {
            if (!_redo.TryPop(out var last))
            {
                return;
            }

            _undo.Push((Town, last.Label));
            Show(last.After);
        }

        Changed?.Invoke();
    }

    /// <summary>Saves: to the file the town came from, or to a new one beside the program's working folder.</summary>
    /// <param name="name">A new file's name; none to save where it came from.</param>
    /// <returns>What kept it from being saved.</returns>
    public ItemList<Problem> Save(string? name)
    {
        ExchangeFileResult result;
        lock (_gate)
        {
            result = name is null && _file is { } file
                ? file.Save(Town)
                : ExchangeFile.Create($"{Slug.Of(name ?? Town.Name)}.json", Town);
            _file = result.File ?? _file;
        }

        Changed?.Invoke();
        return result.Problems;
    }

    private static Lazy<RouteProposal> Suggested(Town town) => new(() => RouteProposal.Of(town));

    private void Show(Town town)
    {
        Study = Study.After(town);
        _routes = Suggested(town);
    }
}
