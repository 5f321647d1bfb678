using Duskwright.Book.Houses;
using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Results;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>The lamps of a house as a table to type in, beside its drawings.</summary>
public partial class LampTable
{
    private string? _wrong;
    private (string Column, string Lamp)? _refused;

    [Parameter, EditorRequired]
    public BuildingResult House { get; set; } = default!;

    /// <summary>Where its lamps are drawn.</summary>
    [Parameter, EditorRequired]
    public ItemList<LampSpot> Spots { get; set; } = [];

    [Inject]
    private OpenTown Open { get; set; } = default!;

    private Lamp? Lamp(LampSpot spot) => new RoomAt(spot.Storey, spot.Room).In(House.Building)?.Lamps.ElementAtOrDefault(spot.Index);

    // A cell that is read when it is left; what will not do stays as it is typed.
    private RenderFragment Cell(string column, LampSpot spot, Length? value, Func<Length?, Lamp> changed) => builder =>
    {
        builder.OpenElement(0, "input");
        builder.AddAttribute(1, "aria-label", $"{column}, {spot.Name}");
        builder.AddAttribute(2, "value", Open.Lengths.Words(value));
        builder.AddAttribute(3, "placeholder", "not said");
        builder.AddAttribute(4, "onchange", EventCallback.Factory.Create<ChangeEventArgs>(this, e =>
        {
            Read($"{column}, {spot.Name}", spot, e.Value?.ToString()?.Trim() ?? "", changed);
            _refused = _wrong is null ? null : (column, spot.Name);
        }));
        if (_refused == (column, spot.Name))
        {
            builder.AddAttribute(5, "aria-invalid", "true");
            builder.AddAttribute(6, "aria-describedby", "lamps-refused");
        }

        builder.CloseElement();
    };

    private void Read(string field, LampSpot spot, string text, Func<Length?, Lamp> changed)
    {
        if (text.Length == 0)
        {
            Say(spot, changed(null));
        }
        else if (Open.Lengths.Read(text) is { } length)
        {
            Say(spot, changed(length));
        }
        else
        {
            _wrong = $"{field}: “{text}” will not do; {Open.Lengths.Example} is allowed.";
        }
    }

    private void Say(LampSpot spot, Lamp lamp)
    {
        var problems = Open.Apply(new HouseHand(House).Change(new HousePiece(PieceKind.Lamp, new RoomAt(spot.Storey, spot.Room), spot.Index), lamp, "change a lamp"), told: true);
        _wrong = problems.Count == 0 ? null : $"{problems[0].Message} {problems[0].Remedy}";
    }
}
