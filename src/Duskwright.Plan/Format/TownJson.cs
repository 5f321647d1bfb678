using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;

namespace Duskwright.Plan.Format;

/// <summary>The town document as JSON: hand-writable, units in the field names, read and written without loss.</summary>
public static class TownJson
{
    /// <summary>The name of the format, the first field of every document.</summary>
    public const string FormatName = "duskwright-town";

    /// <summary>The version written, and the newest that is read.</summary>
    public const int Version = 1;

    /// <summary>The largest document that is read, bytes.</summary>
    public const int MostBytes = 16 * 1024 * 1024;

    private const int MostDepth = 32;
    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
    private static readonly JsonDocumentOptions Leniency = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true, MaxDepth = MostDepth };

    /// <summary>Writes a town.</summary>
    /// <param name="town">The town.</param>
    /// <returns>Indented JSON in a fixed order; what is not said is left out.</returns>
    public static string Write(Town town)
    {
        var body = JsonSerializer.SerializeToNode(town, TownJsonOptions.Shared)!.AsObject();
        var document = new JsonObject { ["format"] = FormatName, ["version"] = Version };
        foreach (var (name, value) in body.ToList())
        {
            body.Remove(name);
            document[name] = value;
        }

        return document.ToJsonString(TownJsonOptions.Shared) + "\n";
    }

    /// <summary>Reads a town from the bytes of a file.</summary>
    /// <param name="bytes">UTF-8, with or without a byte order mark.</param>
    /// <returns>The town, or every problem found.</returns>
    public static TownReadResult Read(ReadOnlyMemory<byte> bytes)
    {
        if (bytes.Length > MostBytes)
        {
            return Refused("", "too-large", $"The file has {bytes.Length / 1048576} MB; at most {MostBytes / 1048576} MB is read.", "Check that this is a town and not a picture.");
        }

        var span = bytes.Span;
        if (span.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) || span.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]) || (span.Length > 1 && span[..2].Contains((byte)0)))
        {
            return WrongEncoding();
        }

        if (span.StartsWith(Encoding.UTF8.Preamble))
        {
            span = span[Encoding.UTF8.Preamble.Length..];
        }

        try
        {
            return Read(StrictUtf8.GetString(span));
        }
        catch (DecoderFallbackException)
        {
            return WrongEncoding();
        }
    }

    /// <summary>Reads a town from text.</summary>
    /// <param name="text">JSON; comments and commas too many are forgiven.</param>
    /// <returns>The town, or every problem found.</returns>
    public static TownReadResult Read(string text)
    {
        JsonNode? root;
        try
        {
            root = JsonNode.Parse(text, documentOptions: Leniency);
        }
        catch (JsonException broken)
        {
            return BrokenJson(broken, text);
        }
        catch (ArgumentException)
        {
            // JsonNode finds a field written twice in one object only when it is looked at; here it is the top one.
            return TwiceWritten("");
        }

        if (root is not JsonObject document)
        {
            return Refused("", "not-a-town", "The file holds no town: a town is written between { and }.", "Start from one of the examples.");
        }

        try
        {
            if (Envelope(document) is { } refusal)
            {
                return new TownReadResult(null, [refusal]);
            }

            DocumentUpgrades.Apply(document);
            document.Remove("format");
            document.Remove("version");
            var fields = FieldChecks.Of(document);
            if (fields.Count > 0)
            {
                return new TownReadResult(null, fields);
            }

            var town = document.Deserialize<Town>(TownJsonOptions.Shared)!;
            var problems = TownChecks.Of(town);
            return new TownReadResult(problems.Count == 0 ? town : null, problems);
        }
        catch (ArgumentException)
        {
            return TwiceWritten("");
        }
        catch (JsonException broken)
        {
            return Refused(Path(broken.Path), "wrong-value", broken.InnerException is FormatException or ArgumentException
                ? broken.InnerException.Message
                : $"{LastName(broken.Path)} is not written as it should be.", "Compare it with the examples or with the schema.");
        }
    }

    private static Problem? Envelope(JsonObject document)
    {
        if (document["format"] is not JsonValue format || format.GetValueKind() != JsonValueKind.String || format.GetValue<string>() != FormatName)
        {
            return new Problem("format", "not-a-town", $"The first field must be \"format\": \"{FormatName}\".", "Add it, if this is a town.");
        }

        if (document["version"] is not JsonValue value || value.GetValueKind() != JsonValueKind.Number || !value.TryGetValue<int>(out var version) || version < 0)
        {
            return new Problem("version", "not-a-town", $"The version must be a whole number from 0 to {Version}.", $"Write \"version\": {Version}.");
        }

        return version > Version
            ? new Problem("version", "newer-version", $"This town was written by a newer Duskwright (version {version}); this one reads up to version {Version}.", "Use the newer Duskwright; the file has been left as it is.")
            : null;
    }

    private static TownReadResult BrokenJson(JsonException broken, string text)
    {
        if (text.Trim().Length == 0)
        {
            return Refused("", "empty", "The file is empty.", "Start from one of the examples.");
        }

        var line = (broken.LineNumber ?? 0) + 1;
        var column = (broken.BytePositionInLine ?? 0) + 1;
        var where = string.Create(CultureInfo.InvariantCulture, $"line {line}, column {column}");
        if (broken.Message.Contains("depth", StringComparison.OrdinalIgnoreCase))
        {
            return Refused(where, "too-deep", $"Brackets are nested deeper than {MostDepth} at {where}.", "A town needs about ten; look for a bracket that is never closed.");
        }

        var unfinished = broken.Message.Contains("end of", StringComparison.OrdinalIgnoreCase) || broken.Message.Contains("incomplete", StringComparison.OrdinalIgnoreCase);
        return unfinished
            ? Refused(where, "cut-short", $"The file ends too early, at {where}.", "The last part is missing; fetch the whole file, or close the open brackets.")
            : Refused(where, "not-json", $"The text cannot be understood at {where}.", "Look there for a comma, quote or bracket that is missing or too many.");
    }

    private static TownReadResult TwiceWritten(string path) =>
        Refused(path, "field-twice", "A field is written twice between the same pair of brackets.", "Keep one of the two.");

    private static TownReadResult WrongEncoding() =>
        Refused("", "wrong-encoding", "The file is not UTF-8 text.", "Save it again as UTF-8.");

    private static TownReadResult Refused(string path, string rule, string message, string remedy) =>
        new(null, [new Problem(path, rule, message, remedy)]);

    private static string Path(string? jsonPath) => (jsonPath ?? "").TrimStart('$').TrimStart('.');

    private static string LastName(string? jsonPath)
    {
        var name = Path(jsonPath);
        return name.Length == 0 ? "The document" : name[(name.LastIndexOf('.') + 1)..];
    }
}
