using Duskwright.Plan;
using Duskwright.Plan.Checks;

namespace Duskwright.Store;

/// <summary>A working file opened, or everything that kept it from being so.</summary>
/// <param name="File">The file; none where there are problems.</param>
/// <param name="Problems">All problems.</param>
public sealed record WorkingFileResult(WorkingFile? File, ItemList<Problem> Problems);
