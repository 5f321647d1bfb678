using Duskwright.Plan;
using Duskwright.Plan.Document;
using Duskwright.Plan.Quantities;

namespace Duskwright.Study.Tests;

public class IncrementalTests
{
    [Fact]
    public void After_any_edits_the_study_is_exactly_the_fresh_one() =>
        Gen.Select(Gen.Int[0, 41], Gen.Int[0, 6], Gen.Double[50, 900]).Array[1, 4].Sample(
            edits =>
            {
                var study = TownStudy.Of(Demo.Saltmarrow);
                _ = (study.Findings, study.Scenes);
                foreach (var (building, kind, number) in edits)
                {
                    study = study.After(Edited(study.Town, building, kind, number));
                    _ = (study.Findings, study.Scenes);
                }

                Assert.Equal(Everything(TownStudy.Of(study.Town)), Everything(study));
            },
            iter: 12);

    private static Town Edited(Town town, int index, int kind, double number)
    {
        Building Change(Building b) => kind switch
        {
            0 => b with { PairLength = Length.FromMillimetres(number) },
            1 => b with { Resistor = ResistorChoice.Of(Resistance.FromOhms(number)) },
            2 => b with { SwitchGroup = town.SwitchGroups[(int)number % town.SwitchGroups.Count].Id },
            3 => b with { Led = PartId.Unknown },
            4 => b with { Wire = number > 400 ? "cu-0.10" : "awg-28" },
            _ => b with { TailLength = Length.FromMillimetres(number) },
        };
        return kind == 6
            ? town with { Show = town.Show with { HoursPerDay = Duration.FromHours(1 + (number / 100)) } }
            : town with { Buildings = town.Buildings.Select((b, i) => i == index ? Change(b) : b).ToItemList() };
    }

    private static string Everything(TownStudy study) => string.Join('\n', [
        .. study.Findings.Select(f => $"{f.Rule} {f.Subject} {f.Text} {f.Remedy}"),
        .. study.Lamps.Select(l => $"{l.Building} {l.Name} {l.Current?.Value:R} {l.Current?.Low:R} {l.Current?.High:R} {l.Evenness:R} {l.PaneLuminance?.Value:R} {string.Join(' ', l.LightShares)}"),
        .. study.Packs.Select(p => $"{p.Supply.Id} {p.Load?.Value:R} {p.HoursToDim?.Value:R} {p.HoursToDim?.Low:R} {p.Carrying?.DimByEnd.Value} {p.ShortCircuit?.WireTemperature.Value:R}"),
        .. study.SwitchList.Select(s => $"{s.Id} {s.Current?.Value:R}"),
        .. study.Scenes.SelectMany(s => s.Packs.Select(p => $"{s.Scene.Name} {p.Supply} {p.Load.Value:R} {p.HoursToDim?.Value:R} {p.Worst?.Lightness.Value:R}")),
        .. study.CutList.Select(c => $"{c.Label} {c.Length.Value:R}"),
        .. study.PartsList.Select(p => $"{p.Part} {p.Needed} {p.Packs} {p.Cost?.Value:R}"),
    ]);
}
