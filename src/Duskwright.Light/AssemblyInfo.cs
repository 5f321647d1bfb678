using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("Duskwright.Light.Tests")]
