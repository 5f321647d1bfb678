using System.CommandLine;
using Duskwright.Study.Figures;
using Duskwright.Study.Questions;

namespace Duskwright.Commands;

/// <summary>Questions that need no town.</summary>
internal static class SumsCommand
{
    /// <summary>The word that asks for them.</summary>
    internal const string Word = "sums";

    /// <summary>The verb with a verb for each question; laying them all out takes a fifth of a second, which who asks none need not wait for.</summary>
    /// <param name="asked">Whether a question is asked.</param>
    internal static Command Create(bool asked)
    {
        var sums = new Verb(Word, "Questions that need no town.", "Each question answers with what a beginner usually has where nothing is said.", "sums resistor --cells 3 --ma 2", "sums hours --lamps 30 --ohm 820", "sums wire --mm 1500 --ma 150");
        foreach (var question in asked ? MakersQuestions.All : [])
        {
            sums.Add(Asking(question));
        }

        sums.SetAction(_ => List());
        return sums;
    }

    private static int List()
    {
        foreach (var question in MakersQuestions.All)
        {
            Console.Out.WriteLine($"{question.Verb,-13} {question.Words}");
        }

        return ExitCode.Fine;
    }

    private static Verb Asking(Question question)
    {
        var command = new Verb(question.Verb, question.Words, "What is not said is taken as a beginner usually has it; the brackets above tell. No town is needed.", [$"sums {question.Verb}", .. Example(question)]);
        var json = Shared.Json();
        var said = question.Asks.Select(Read).ToList();
        foreach (var (option, _) in said)
        {
            command.Add(option);
        }

        command.Add(json);
        command.SetAction(parsed => Print(question, said.Aggregate(Given.Nothing, (given, one) => one.Say(given, parsed)), parsed.GetValue(json)));
        return command;
    }

    // The first number said, so that a newcomer sees what an option looks like.
    private static IEnumerable<string> Example(Question question) =>
        question.Asks.OfType<AskedNumber>().Take(1).Select(n => $"sums {question.Verb} --{n.Option} {Typed.Plain(n.Usual)}");

    private static (Option Option, Func<Given, ParseResult, Given> Say) Read(Asked asked)
    {
        switch (asked)
        {
            case AskedNumber { Whole: true } number:
                var whole = Typed.Whole($"--{number.Option}", number.Label, (int)number.Usual, (int)number.Least, (int)number.Most);
                return (whole, (given, parsed) => given.With(number, parsed.GetValue(whole)));
            case AskedNumber number:
                var real = Typed.Number($"--{number.Option}", number.Label, number.Usual, number.Least, number.Most);
                return (real, (given, parsed) => given.With(number, parsed.GetValue(real)));
            case AskedChoice choice:
                var chosen = Typed.Among($"--{choice.Option}", choice.Label, choice.Usual, [.. choice.Choices.Select(c => c.Id)]);
                return (chosen, (given, parsed) => given.With(choice, parsed.GetRequiredValue(chosen)));
            default:
                throw new ArgumentOutOfRangeException(nameof(asked), asked, "This kind of field is not known.");
        }
    }

    private static int Print(Question question, Given said, bool json)
    {
        if (question.Refused(said) is { } problem)
        {
            Console.Error.WriteLine($"{problem.Message} {problem.Remedy}");
            return ExitCode.BadInput;
        }

        var answer = question.Answer(said);
        if (json)
        {
            ResultJson.Print(new { answer.Headline, answer.Verdict, answer.Text, answer.Figures, answer.Steps, answer.Warnings });
            return ExitCode.Fine;
        }

        Console.Out.WriteLine(answer.Verdict ?? (answer.Headline.Unit.Length > 0 ? FigureText.Of(answer.Headline) : $"{FigureText.Of(answer.Headline)} {answer.Headline.Name}"));
        Console.Out.WriteLine(answer.Text);
        foreach (var step in answer.Steps)
        {
            Console.Out.WriteLine($"  {step}");
        }

        foreach (var warning in answer.Warnings)
        {
            Console.Out.WriteLine($"Mind: {warning}");
        }

        return ExitCode.Fine;
    }
}
