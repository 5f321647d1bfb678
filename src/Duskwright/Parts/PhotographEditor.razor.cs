using Duskwright.Pictures;
using Duskwright.Plan.Document;
using Duskwright.Plan.Edits;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace Duskwright.Parts;

/// <summary>The photograph under the board: chosen, scaled, shifted, hidden and taken away.</summary>
public partial class PhotographEditor
{
    private const int MostBytes = 16_000_000;
    private const string Shown = "Show it";
    private const string Hid = "Hide it";
    private const string Moved = "Move the photograph";

    /// <summary>Hears that two points are to be put on it.</summary>
    [Parameter]
    public EventCallback Scale { get; set; }

    private Photograph? Photograph => Open.Town.Board?.Photograph;

    private void Say(Photograph? photograph, string words) => Do(new LayPhotograph(photograph, words));

    private async Task Lay(InputFileChangeEventArgs e)
    {
        if (e.File.Size > MostBytes)
        {
            Wrong = $"{e.File.Name} has {Math.Ceiling(e.File.Size / 1e6):0} MB; at most {MostBytes / 1_000_000} MB are kept. Make it smaller first.";
            return;
        }

        using var stream = new MemoryStream();
        await using (var file = e.File.OpenReadStream(MostBytes))
        {
            await file.CopyToAsync(stream);
        }

        var bytes = stream.ToArray();
        (var shape, Wrong) = PhotographShape.Of(bytes);
        if (shape is { } seen)
        {
            var (id, problems) = Open.KeepPicture(e.File.Name, bytes);
            Wrong = problems.Count == 0 ? null : $"{problems[0].Message} {problems[0].Remedy}".Trim();
            if (Wrong is null)
            {
                Do(LayPhotograph.Fitted(Open.Town, id, seen.Across, seen.High));
            }
        }
    }
}
