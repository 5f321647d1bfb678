using Spectre.Console;

namespace Duskwright.Commands;

/// <summary>Work that takes long enough to be watched: a bar on the error stream, and only where somebody sits before it.</summary>
internal static class LongWork
{
    /// <summary>Does one step after another.</summary>
    /// <param name="steps">What each step is called while it runs, and the step.</param>
    internal static void Run(params (string Words, Action Do)[] steps)
    {
        if (Console.IsErrorRedirected)
        {
            foreach (var step in steps)
            {
                step.Do();
            }

            return;
        }

        var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) });
        console.Progress().AutoClear(true).Start(bar =>
        {
            var task = bar.AddTask(steps[0].Words, maxValue: steps.Length);
            foreach (var (words, work) in steps)
            {
                task.Description = Markup.Escape(words);
                work();
                task.Increment(1);
            }
        });
    }
}
