using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("Duskwright.Book.Tests")]
