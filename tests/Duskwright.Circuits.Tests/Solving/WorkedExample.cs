using System.Globalization;

namespace Duskwright.Circuits.Tests.Solving;

/// <summary>A row of tests/Reference/worked-examples.csv: a textbook example, its inputs, and one printed answer with its tolerance.</summary>
/// <remarks>Each row names its book, example and page. The tolerance follows from the printed digits.</remarks>
internal sealed class WorkedExample
{
    private readonly IReadOnlyDictionary<string, string> _row;
    private readonly Dictionary<string, string> _inputs;

    private WorkedExample(IReadOnlyDictionary<string, string> row)
    {
        _row = row;
        _inputs = row["inputs"].Split(';').Select(p => p.Split('=')).ToDictionary(p => p[0], p => p[1], StringComparer.Ordinal);
    }

    internal string Id => _row["example_id"];

    internal string Topic => _row["topic"];

    internal string Quantity => _row["quantity"];

    internal double this[string input] => double.Parse(_inputs[input], CultureInfo.InvariantCulture);

    internal bool Has(string input) => _inputs.ContainsKey(input);

    internal IReadOnlyList<double> List(string input) => [.. _inputs[input].Split(',').Select(n => double.Parse(n, CultureInfo.InvariantCulture))];

    internal void Check(double computed) => Assert.Equal(_row.Number("expected_value"), computed, _row.Number("abs_tolerance"));

    internal static WorkedExample Of(string id, string quantity) => new(ReferenceRows.Of("worked-examples.csv").Single(r => r["example_id"] == id && r["quantity"] == quantity));

    /// <summary>The examples of some kind that give all the inputs named, as data of a theory.</summary>
    internal static TheoryData<string, string> Named(Func<WorkedExample, bool> wanted)
    {
        var data = new TheoryData<string, string>();
        foreach (var example in ReferenceRows.Of("worked-examples.csv").Select(r => new WorkedExample(r)).Where(wanted))
        {
            data.Add(example.Id, example.Quantity);
        }

        return data;
    }
}
