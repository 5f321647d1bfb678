namespace Duskwright.Store.Schema;

/// <summary>One step in the making of a working file. Never edited once a file has been made with it; what is to be different is a further step.</summary>
/// <param name="Number">Its place, from 1.</param>
/// <param name="Name">What it brings, for the journal.</param>
/// <param name="Sql">What it does.</param>
internal sealed record SchemaStep(int Number, string Name, string Sql);
