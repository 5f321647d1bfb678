using System.Globalization;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;
using Duskwright.Study;
using Duskwright.Study.Results;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>How long each pack has burnt by the log, how long it still does, and when its cells are changed.</summary>
public partial class Running
{
    private const double MostHours = 1000;

    private readonly Dictionary<string, string> _burnt = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _said = new(StringComparer.Ordinal);

    /// <summary>The town's results.</summary>
    [Parameter, EditorRequired]
    public TownStudy Study { get; set; } = default!;

    [Inject]
    private OpenTown Open { get; set; } = default!;

    [Inject]
    private TimeProvider Time { get; set; } = default!;

    private string Burnt(string id) => _burnt.GetValueOrDefault(id) ?? Open.Town.Show.HoursPerDay.Hours.ToString("0.##", CultureInfo.InvariantCulture);

    private IEnumerable<(PackResult Pack, PackRunning Running)> Packs => Study.Running
        .Join(Study.Packs.Where(p => p.Lamps > 0), r => r.Supply.Id, p => p.Supply.Id, (r, p) => (p, r));

    private bool Lasts(PackRunning pack) => pack.ShowDaysLeft is not { } days || days >= Open.Town.Show.Days;

    private string Short(PackRunning pack) => pack switch
    {
        { CellsOut: true } => "cells out",
        { ShowDaysLeft: null } => "never dim",
        { ShowDaysLeft: 0 } => "may not last a day",
        { ShowDaysLeft: { } days } => Lasts(pack) ? $"lasts the show, {Days(days)}" : $"lasts {Days(days)}",
    };

    private static string Days(int days) => days == 1 ? "a day" : $"{days} days";

    private void Enter(string id, LogKind kind)
    {
        _said.Remove(id);
        var hours = 0.0;
        if (kind == LogKind.Burnt && !(double.TryParse(Burnt(id).Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out hours) && hours is > 0 and <= MostHours))
        {
            _said[id] = $"“{Burnt(id)}” is not a number of hours; write 8 or 7.5.";
            return;
        }

        var now = Time.GetLocalNow().DateTime;
        var entry = new LogEntry
        {
            Date = DateOnly.FromDateTime(now),
            Time = new TimeOnly(now.Hour, now.Minute, now.Second),
            Kind = kind,
            Supply = id,
            Burnt = kind == LogKind.Burnt ? Duration.FromHours(hours) : null,
        };
        if (Open.Enter(Guid.NewGuid().ToString("N"), _ => (entry, null)) is [var problem, ..])
        {
            _said[id] = $"{problem.Message} {problem.Remedy}";
        }
    }
}
