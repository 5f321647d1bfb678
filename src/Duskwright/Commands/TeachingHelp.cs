using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Duskwright.Commands;

/// <summary>The usual help, and below it what a newcomer should know and lines to try.</summary>
internal sealed class TeachingHelp(HelpAction usual) : SynchronousCommandLineAction
{
    private const int Columns = 100;

    public override int Invoke(ParseResult parseResult)
    {
        var code = usual.Invoke(parseResult);
        if (parseResult.CommandResult.Command is Verb verb)
        {
            var output = parseResult.InvocationConfiguration.Output;
            foreach (var line in Wrapped(verb.More))
            {
                output.WriteLine(line);
            }

            output.WriteLine();
            output.WriteLine("Try:");
            foreach (var example in verb.Examples)
            {
                output.WriteLine($"  {parseResult.RootCommandResult.Command.Name} {example}");
            }
        }

        return code;
    }

    private static IEnumerable<string> Wrapped(string text)
    {
        var line = "";
        foreach (var word in text.Split(' '))
        {
            if (line.Length + word.Length >= Columns)
            {
                yield return line;
                line = "";
            }

            line = line.Length == 0 ? word : $"{line} {word}";
        }

        yield return line;
    }
}
