using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Duskwright.Plan.Format;
using Duskwright.Plan.Quantities;

namespace Duskwright.Plan.Tests.Edits;

public sealed class DescribeTownTests
{
    [Fact]
    public void Another_name_scale_and_show_leave_everything_else_as_it_was_and_come_back_from_the_file()
    {
        var before = new Town { Name = "My town", Buildings = [new Building { Name = "Eel house", Leds = 2 }] };
        var after = new DescribeTown("Hollin Weir", 87, before.Show with { HoursPerDay = Duration.FromHours(6.5), Days = 3 }, "Call it Hollin Weir").Apply(before);
        Assert.Equal(before, after with { Name = before.Name, ScaleRatio = null, Show = before.Show });
        Assert.Equal(("Hollin Weir", 87.0, 6.5, 3), (after.Name, after.ScaleRatio!.Value, after.Show.HoursPerDay.Hours, after.Show.Days));
        Assert.Equal(after, TownJson.Read(TownJson.Write(after)).Town);
    }
}
