using System.CommandLine;
using System.Globalization;
using Duskwright.Book.Night;
using Duskwright.Plan.Document;
using Duskwright.Study;
using Duskwright.Towns;

namespace Duskwright.Commands;

/// <summary>Paints the town at night as a picture, from the same scene as the view on the screen.</summary>
internal static class NightCommand
{
    private const int UsualWidth = 1600;
    private const int MostWidth = 8000;
    private const double UsualLux = 3;

    internal static Command Create()
    {
        var town = Shared.TownPath();
        var file = Shared.Out("the PNG file to write; with several hours one for each, the hour before its ending");
        var hours = new Option<string>("--hour") { Description = "hours into the show, several with commas between: 0,4,8", DefaultValueFactory = _ => "0" };
        var lux = Typed.Number("--lux", "light in the room, lx", UsualLux, Viewpoint.LeastLux, Viewpoint.MostLux);
        var from = new Option<string?>("--from") { Description = "where to stand: a viewing position of the town, \"from above\" or \"low over the front edge\"" };
        var off = new Option<string>("--off") { Description = "switches that are off, with commas between: A,B", DefaultValueFactory = _ => "" };
        var width = Typed.Whole("--width", "pixels across; five eighths of it high", UsualWidth, 64, MostWidth);
        var command = new Verb(
            "night",
            "Paint the town at night, as eyes settled in the room would see it.",
            "Every pane has the luminance and colour that its lamps, its room and its glass give it at that hour. Houses whose windows are not described get usual ones.",
            "night examples/saltmarrow.json --out night.png",
            "night examples/saltmarrow.json --out show.png --hour 0,4,8 --lux 1 --from \"at the quay\"")
        {
            town, file, hours, lux, from, off, width,
        };
        command.SetAction(parsed => Run(
            parsed.GetRequiredValue(town), parsed.GetRequiredValue(file), parsed.GetValue(hours)!, parsed.GetValue(lux), parsed.GetValue(from), parsed.GetValue(off)!, parsed.GetValue(width)));
        return command;
    }

    private static int Run(string path, string file, string hours, double lux, string? from, string off, int width)
    {
        if (ReadTown.From(path) is not { } town)
        {
            return ExitCode.BadInput;
        }

        if (NightScene.Of(TownStudy.Of(town)) is not { } scene)
        {
            return Refused($"{town.Name} has no board, and a town without one cannot be painted; draw the board first.");
        }

        if (from is not null && scene.Eyes.All(e => e.Name != from))
        {
            return Refused($"--from is {from}; {string.Join(", ", scene.Eyes.Select(e => e.Name))} is allowed.");
        }

        var groups = off.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).ToHashSet(StringComparer.Ordinal);
        if (groups.FirstOrDefault(g => town.SwitchGroups.All(s => s.Id != g)) is { } stranger)
        {
            return Refused($"--off names {stranger}; the switches are {string.Join(", ", town.SwitchGroups.Select(s => s.Id))}.");
        }

        if (Hours(hours, town) is not { } wished)
        {
            return Refused($"--hour is {hours}; numbers from 0 to {town.Show.HoursPerDay.Hours.ToString("0.##", CultureInfo.InvariantCulture)} with commas between are allowed.");
        }

        try
        {
            var light = NightLight.Of(scene, groups);
            var eye = scene.Eyes.First(e => from is null || e.Name == from);
            foreach (var hour in wished)
            {
                var name = wished.Count == 1 ? file : Path.ChangeExtension(file, string.Create(CultureInfo.InvariantCulture, $"{hour:0.##}h{Path.GetExtension(file)}"));
                using var stream = File.Create(name);
                NightStill.Write(scene, light, eye, hour, lux, width, width * 5 / 8, stream);
                Console.Out.WriteLine(name);
            }

            return ExitCode.Fine;
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            return Refused($"{file} cannot be written: {refused.Message}");
        }
    }

    private static List<double>? Hours(string text, Town town)
    {
        var hours = new List<double>();
        foreach (var part in text.Split(',', StringSplitOptions.TrimEntries))
        {
            if (!double.TryParse(part, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var hour) || hour > town.Show.HoursPerDay.Hours)
            {
                return null;
            }

            hours.Add(hour);
        }

        return hours;
    }

    private static int Refused(string sentence)
    {
        Console.Error.WriteLine(sentence);
        return ExitCode.BadInput;
    }
}
