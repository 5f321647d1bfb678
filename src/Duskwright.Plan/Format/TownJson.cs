using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;

namespace Duskwright.Plan.Format;

/// <summary>The town document as JSON: hand-writable, units in the field names, read and written without loss.</summary>
public static partial class TownJson
{
    /// <summary>The name of the format, the first field of every document.</summary>
    public const string FormatName = "duskwright-town";

    /// <summary>The version written, and the newest that is read.</summary>
    public const int Version = 2;

    /// <summary>The largest document that is read, bytes.</summary>
    public const int MostBytes = 16 * 1024 * 1024;

    private const int MostDepth = 32;
    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
    private static readonly JsonDocumentOptions Leniency = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true, MaxDepth = MostDepth, AllowDuplicateProperties = false };

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
        text = text.TrimStart('\uFEFF');
        if (HalfCharacterIn(text) is { } half)
        {
            var before = text[..half].Split('\n');
            var place = string.Create(CultureInfo.InvariantCulture, $"line {before.Length}, column {before[^1].Length + 1}");
            return Refused(place, "half-a-character", $"The text at {place} holds half a character.", "Type that text anew.");
        }

        JsonNode? root;
        try
        {
            root = JsonNode.Parse(text, documentOptions: Leniency);
        }
        catch (JsonException broken)
        {
            return BrokenJson(broken, text);
        }
        if (root is not JsonObject document)
        {
            return Refused("", "not-a-town", "The file holds no town: a town is written between { and }.", "Start from one of the examples.");
        }

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

        LeaveOutNulls(document);
        var town = document.Deserialize<Town>(TownJsonOptions.Shared)!;
        var problems = TownChecks.Of(town);
        return new TownReadResult(problems.Count == 0 ? town : null, problems);
    }

    // Half a character may stand in the text itself or in its escapes.
    private static int? HalfCharacterIn(string text)
    {
        try
        {
            var bytes = StrictUtf8.GetBytes(text);
            return HalfCharacters.FirstIn(bytes, MostDepth) is { } at ? StrictUtf8.GetCharCount(bytes, 0, at) : null;
        }
        catch (EncoderFallbackException half)
        {
            return half.Index;
        }
    }

    // A null says nothing, as if the field were left out; a record would take it for a value.
    private static void LeaveOutNulls(JsonNode? node)
    {
        if (node is JsonArray list)
        {
            foreach (var item in list)
            {
                LeaveOutNulls(item);
            }
        }
        else if (node is JsonObject fields)
        {
            foreach (var name in fields.Where(f => f.Value is null).Select(f => f.Key).ToList())
            {
                fields.Remove(name);
            }

            foreach (var (_, value) in fields)
            {
                LeaveOutNulls(value);
            }
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

        if (TwiceWritten().Match(broken.Message) is { Success: true } twice)
        {
            return Refused("", "field-twice", $"The field \"{twice.Groups[1].Value}\" is written twice between the same pair of brackets.", "Keep one of the two.");
        }

        var lines = text.TrimEnd().Split('\n');
        var line = (int)Math.Min(broken.LineNumber ?? 0, lines.Length - 1);
        var bytes = Encoding.UTF8.GetBytes(lines[line]);
        var column = Encoding.UTF8.GetCharCount(bytes, 0, (int)Math.Min(broken.BytePositionInLine ?? 0, bytes.Length));
        var where = string.Create(CultureInfo.InvariantCulture, $"line {line + 1}, column {column + 1}");
        if (broken.Message.Contains("maximum configured depth", StringComparison.Ordinal))
        {
            return Refused(where, "too-deep", $"Brackets are nested deeper than {MostDepth} at {where}.", "A town needs about ten; look for a bracket that is never closed.");
        }

        return line == lines.Length - 1 && (column >= lines[line].Length || broken.Message.Contains("end of data", StringComparison.Ordinal) || broken.Message.Contains("end of the JSON", StringComparison.Ordinal))
            ? Refused(where, "cut-short", $"The file ends too early, at {where}.", "The last part is missing; fetch the whole file, or close the open brackets.")
            : Refused(where, "not-json", $"The text cannot be understood at {where}.", "Look there for a comma, quote or bracket that is missing or too many.");
    }

    // The reader names the field only inside its message.
    [GeneratedRegex("^Duplicate property '(.*)' encountered")]
    private static partial Regex TwiceWritten();

    private static TownReadResult WrongEncoding() =>
        Refused("", "wrong-encoding", "The file is not UTF-8 text.", "Save it again as UTF-8.");

    private static TownReadResult Refused(string path, string rule, string message, string remedy) =>
        new(null, [new Problem(path, rule, message, remedy)]);
}
