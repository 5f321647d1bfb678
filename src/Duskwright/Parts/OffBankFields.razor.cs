using System.Globalization;
using Duskwright.Study.Mending;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Parts;

/// <summary>What a meter shows at the pair of one house, taken off the bank: ohms, and the diode range both ways round.</summary>
public partial class OffBankFields
{
    private const double MostRead = 1e8;

    private static readonly (string Words, bool Diode, bool Reversed)[] Rows =
        [("Ohms", false, false), ("Diode range, V", true, false), ("Diode range, leads changed over, V", true, true)];

    private readonly string[] _texts = ["", "", ""];
    private readonly bool[] _over = [false, false, false];

    [Parameter, EditorRequired]
    public string Building { get; set; } = "";

    [Parameter, EditorRequired]
    public string Name { get; set; } = "";

    /// <summary>Told all its readings whenever one changes.</summary>
    [Parameter, EditorRequired]
    public EventCallback<IReadOnlyList<OffBankReading>> Read { get; set; }

    private static double? Number(string text) =>
        double.TryParse(text.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && value is >= 0 and <= MostRead ? value : null;

    private string? Wrong(int row) => !_over[row] && _texts[row].Trim().Length > 0 && Number(_texts[row]) is null ? $"“{_texts[row]}” is not what a meter shows; write {(Rows[row].Diode ? "1.9 or 1,9" : "5.3 or 5,3")}." : null;

    private Task Said(int row, ChangeEventArgs e)
    {
        _texts[row] = e.Value as string ?? "";
        return Tell();
    }

    private Task Over(int row, ChangeEventArgs e)
    {
        _over[row] = e.Value is true;
        return Tell();
    }

    private Task Tell() => Read.InvokeAsync([.. Rows
        .Select((r, i) => (r, i))
        .Where(x => _over[x.i] || Number(_texts[x.i]) is not null)
        .Select(x => new OffBankReading(Building, x.r.Diode, x.r.Reversed, _over[x.i] ? null : Number(_texts[x.i])))]);
}
