using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Study;
using Duskwright.Study.Results;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;

namespace Duskwright.Pictures;

/// <summary>The board from above, with every building to select, its panes as bright as they are at the hour.</summary>
public partial class BoardPicture
{
    private const double UsualPocketMillimetres = 420;

    [Parameter, EditorRequired]
    public TownStudy Study { get; set; } = default!;

    [Parameter, EditorRequired]
    public Moment Moment { get; set; } = default!;

    /// <summary>Routes that are only suggested.</summary>
    [Parameter]
    public IReadOnlyList<Plan.Document.Route> Suggested { get; set; } = [];

    [Parameter]
    public bool Dusk { get; set; }

    [Parameter]
    public string? Selected { get; set; }

    [Parameter]
    public EventCallback<string> Picked { get; set; }

    private Town Town => Study.Town;

    private Board Board => Town.Board!;

    private double W => Board.Width.Millimetres;

    private double D => Board.Depth.Millimetres;

    private double BankW => Board.Bank?.PocketWidth?.Millimetres ?? Math.Min(UsualPocketMillimetres, W / 3);

    private double BankH => Board.Bank?.PocketDepth?.Millimetres ?? 76;

    private IReadOnlyList<HouseOnPlan> Houses { get; set; } = [];

    private IReadOnlyList<(ItemList<Point> Points, int Circuit, bool Suggested, string Words)> Wires { get; set; } = [];

    protected override void OnParametersSet()
    {
        Houses = [.. Study.Buildings.Where(b => b.Building.Place is not null).Select(b => HouseOnPlan.Of(b, Moment, D, b.Building.Key == Selected))];
        var circuits = Study.Buildings.ToDictionary(b => b.Building.Key, StringComparer.Ordinal);
        Wires =
        [
            .. Town.Routes.Select(r => (r, false)).Concat(Suggested.Select(r => (r, true))).Where(r => circuits.ContainsKey(r.r.Building))
                .Select(r => (r.r.Points, circuits[r.r.Building].Circuit, r.Item2, $"{circuits[r.r.Building].Building.Name}, {r.r.Length.Metres:0.00} m{(r.Item2 ? ", suggested" : "")}")),
        ];
    }

    private static int Colour(int circuit) => circuit <= 0 ? 0 : ((circuit - 1) % 7) + 1;

    private static string F(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string X(Point p, double dx = 0) => F(p.X.Millimetres + dx);

    private string Y(Point p, double dy = 0) => F(D - p.Y.Millimetres + dy);

    private string Points(IEnumerable<Point> points) => string.Join(' ', points.Select(p => $"{X(p)},{Y(p)}"));

    private IEnumerable<Scenery> Of(SceneryKind kind) => Board.Scenery.Where(s => s.Kind == kind);

    private double Left(PackResult pack) => Moment.Packs.FirstOrDefault(p => p.Supply == pack.Supply.Id)?.ChargeLeft ?? pack.Supply.ChargeLeft;

    private Task Key(KeyboardEventArgs e, string key) => e.Key is "Enter" or " " ? Picked.InvokeAsync(key) : Task.CompletedTask;
}
