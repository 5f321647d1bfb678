using Duskwright.Plan;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;

namespace Duskwright.Study.Results;

/// <summary>The tests of a building, in order of the work. All work from lit and dark alone; a reading only sharpens.</summary>
internal static class TestPoints
{
    internal static ItemList<TestPoint> Of(IReadOnlyList<LampResult> lamps, Figure? current)
    {
        if (lamps.Count == 0)
        {
            return [];
        }

        var tests = new List<TestPoint>
        {
            new("lamps on the bench", "Touch each lamp with its resistor to the test pack, long leg to plus.", lamps.Count, current),
            new("lamps in, roof off", "Touch the house's pair to the test pack, plus to plus.", lamps.Count, current),
        };
        if (lamps.All(l => l.Part.Kind is LampKind.Led or LampKind.ReadyWired))
        {
            tests.Add(new TestPoint("turned round", "Touch the pair the wrong way round through 1 kΩ: nothing may light.", 0, null));
        }

        tests.Add(new TestPoint("fed, at the bank", "Join only this house and switch it on.", lamps.Count, current));
        tests.Add(new TestPoint("glued in and dry", "Switch it on again once the glue is dry.", lamps.Count, current));
        return tests.ToItemList();
    }
}
