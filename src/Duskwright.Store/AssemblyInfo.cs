using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("Duskwright.Store.Tests")]
