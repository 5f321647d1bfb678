using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Format;
using Duskwright.Plan.Lists;
using Duskwright.Towns;
using Microsoft.AspNetCore.Components.Forms;

namespace Duskwright.Places;

/// <summary>The town's file, its named points in time, and the maker's other towns; a file that cannot be read changes nothing.</summary>
public partial class FilePlace
{
    private string? _said;
    private ItemList<Problem> _problems = [];

    private void Measure(Microsoft.AspNetCore.Components.ChangeEventArgs e) => Open.MeasureIn(LengthRule.All.First(r => r.Unit == e.Value?.ToString()));

    private void Turn() => _said = $"{Open.Town.Name} is open.";

    private async Task Load(InputFileChangeEventArgs e)
    {
        if (e.File.Size > TownJson.MostBytes)
        {
            _problems = [new Problem(e.File.Name, "too-large", $"The file is larger than {TownJson.MostBytes / 1048576} MB.", "Check that this is a town and not a picture.")];
            return;
        }

        using var bytes = new MemoryStream();
        await using (var stream = e.File.OpenReadStream(TownJson.MostBytes))
        {
            await stream.CopyToAsync(bytes);
        }

        Take(e.File.Name, bytes.ToArray());
    }

    private void Take(string file, byte[] bytes)
    {
        if (file.EndsWith(".json", StringComparison.OrdinalIgnoreCase))
        {
            var read = TownJson.Read(bytes);
            (_problems, var town) = (read.Problems, read.Town);
            if (town is not null)
            {
                Open.Begin(town);
            }
        }
        else
        {
            var typed = TypedPlan.Of(BuildingList.Read(bytes, Open.Lengths.Unit));
            _problems = typed.Problems;
            if (typed.Study is { } study)
            {
                Open.Begin(study.Town);
            }
        }

        _said = _problems.Count == 0 && Open.Trouble.Count == 0 ? $"{Open.Town.Name} is open." : null;
    }
}
