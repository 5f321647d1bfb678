using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("Duskwright.Study.Tests")]
