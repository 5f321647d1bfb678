using Spectre.Console;

namespace Duskwright.Commands;

/// <summary>Work that takes long enough to be watched: a bar on the error stream, and only where somebody sits before it.</summary>
internal static class LongWork
{
    /// <summary>Does work that tells how far it is.</summary>
    /// <param name="words">What it is called while it runs.</param>
    /// <param name="work">The work; it reports the share that is done, 0 to 1.</param>
    internal static void Run(string words, Action<IProgress<double>> work)
    {
        if (Console.IsErrorRedirected)
        {
            work(new Steps(_ => { }));
            return;
        }

        var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) });
        console.Progress().AutoClear(true).Start(bar =>
        {
            var task = bar.AddTask(Markup.Escape(words), maxValue: 1);
            work(new Steps(share => task.Value = share));
        });
    }

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

    // Progress<T> would report on another thread, after the work may be over.
    private sealed class Steps(Action<double> report) : IProgress<double>
    {
        public void Report(double value) => report(value);
    }
}
