using System.Globalization;
using Duskwright.Plan;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Lists;
using Duskwright.Study.Sums;

namespace Duskwright.Parts;

/// <summary>An unlabelled LED made out from readings and kept among the town's parts.</summary>
public partial class OwnLamp
{
    private const double MostMilliamperes = 100;
    private const double MostVolts = 24;
    private readonly (string Milliamperes, string Volts)[] _readings = [("", ""), ("", "")];
    private string _name = "";
    private string _colour = MeasuredLamp.Colours[0];
    private string? _said;

    private void Keep()
    {
        _said = null;
        if (_name.Trim() is not { Length: > 0 } name)
        {
            Wrong = "It needs a name, such as the drawer it lies in.";
            return;
        }

        var readings = new List<(double Milliamperes, double Volts)>();
        foreach (var (reading, number) in _readings.Select((r, i) => (r, i + 1)).Where(r => r.r.Milliamperes.Trim().Length + r.r.Volts.Trim().Length > 0))
        {
            if (NumberText.Read(reading.Milliamperes, "mA") is not (> 0 and <= MostMilliamperes) || NumberText.Read(reading.Volts, "V") is not (> 0 and <= MostVolts))
            {
                Wrong = string.Create(CultureInfo.InvariantCulture, $"Reading {number} needs both its current, above 0 and up to {MostMilliamperes} mA, and its volts, above 0 and up to {MostVolts} V.");
                return;
            }

            readings.Add((NumberText.Read(reading.Milliamperes, "mA")!.Value, NumberText.Read(reading.Volts, "V")!.Value));
        }

        var lamp = MeasuredLamp.Of(name, _colour, readings.ToItemList());
        if (Do(new KeepLamp(lamp)))
        {
            _said = string.Create(CultureInfo.InvariantCulture, $"{name} is kept: {lamp.ReferenceVoltage.Volts:0.00} V at {lamp.ReferenceCurrent.Milliamperes:0.#} mA, give or take {lamp.VoltageSpread.Volts:0.00} V.");
        }
    }
}
