using Duskwright.Plan.Checks;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace Duskwright.Store.Opening;

/// <summary>Why a working file cannot be opened or changed, in one sentence each.</summary>
internal static class Refusal
{
    internal static Problem NoFile(string path) =>
        Of(path, "no-file", $"There is no file {Named(path)} in {Path.GetDirectoryName(path)}.", "Look at the spelling and the folder.");

    internal static Problem NotReadable(string path, Exception why) =>
        Of(path, "not-readable", $"{Named(path)} cannot be read: {why.Message}", "Close it in other programs, and look whether you may read it.");

    internal static Problem AlreadyThere(string path) =>
        Of(path, "already-there", $"There is a file {Named(path)} already.", "Choose another name, or open that one.");

    internal static Problem NotATown(string path) =>
        Of(path, "not-a-town", $"{Named(path)} is not a town.", "Look whether it is the right file; it has been left as it is.");

    internal static Problem CutShort(string path, long bytes, long wanted) =>
        Of(path, "cut-short", $"{Named(path)} ends too early: it has {bytes} of {wanted} bytes.", "Fetch the whole file again, or use a copy; this one has been left as it is.");

    internal static Problem Damaged(string path) =>
        Of(path, "damaged", $"{Named(path)} is damaged: what it holds is not what was written.", "Use a copy; this one has been left as it is.");

    internal static Problem Newer(string path, long step, int newest) =>
        Of(path, "newer-version", $"{Named(path)} was written by a newer Duskwright (step {step}); this one knows the steps up to {newest}.", "Use the newer Duskwright; the file has been left as it is.");

    internal static Problem OpenElsewhere(string path) =>
        Of(path, "open-elsewhere", $"{Named(path)} is being worked on by another Duskwright{(Holder.Of(path) is { } holder ? $": {holder.Words}" : "")}.", "Go on there, or close it there; one at a time may change a town.");

    internal static Problem NotWritable(string path, string why) =>
        Of(path, "not-writable", $"{Named(path)} cannot be changed where it lies: {why}", "Take a copy to a folder of your own and open that.");

    /// <summary>What the database said, in words.</summary>
    /// <param name="path">The file.</param>
    /// <param name="failed">What it said.</param>
    /// <returns>The problem; the file is as it was before the change.</returns>
    internal static Problem From(string path, SqliteException failed) => failed.SqliteErrorCode switch
    {
        raw.SQLITE_FULL => Of(path, "disk-full", $"{Named(path)} could not take the change: the disk is full.", "Make room and do it again; everything before it is kept."),
        raw.SQLITE_READONLY or raw.SQLITE_CANTOPEN or raw.SQLITE_PERM => NotWritable(path, "the file or its folder may only be read."),
        raw.SQLITE_BUSY or raw.SQLITE_LOCKED => Of(path, "held", $"{Named(path)} is held by another program.", "Close it there and do it again."),
        raw.SQLITE_CORRUPT or raw.SQLITE_NOTADB => Damaged(path),
        _ => Of(path, "not-saved", $"{Named(path)} could not take the change: {failed.Message}", "Look at the folder and the disk; everything before the change is kept."),
    };

    private static string Named(string path) => Path.GetFileName(path);

    private static Problem Of(string path, string rule, string message, string remedy) => new(path, rule, message, remedy);
}
