namespace Duskwright.Commands;

/// <summary>What the program tells the shell.</summary>
internal static class ExitCode
{
    /// <summary>All is well, or only worth a look.</summary>
    internal const int Fine = 0;

    /// <summary>Something spoils the show.</summary>
    internal const int SpoilsTheShow = 1;

    /// <summary>The file, the list or the words of the command cannot be used.</summary>
    internal const int BadInput = 2;
}
