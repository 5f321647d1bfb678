[assembly: System.Runtime.CompilerServices.InternalsVisibleTo("Duskwright.Proposals.Tests")]
