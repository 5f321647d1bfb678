using System.CommandLine;

namespace Duskwright.Commands;

/// <summary>A command that teaches: what it is for, and lines to try.</summary>
/// <param name="name">The word typed.</param>
/// <param name="description">What it does, in a line.</param>
/// <param name="more">What a newcomer should know before the first try.</param>
/// <param name="examples">Lines that work as they stand, without the program's name.</param>
internal sealed class Verb(string name, string description, string more, params string[] examples) : Command(name, description)
{
    /// <summary>What a newcomer should know.</summary>
    internal string More { get; } = more;

    /// <summary>Lines to try.</summary>
    internal IReadOnlyList<string> Examples { get; } = examples;
}
