using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("Duskwright.Circuits.Tests")]
