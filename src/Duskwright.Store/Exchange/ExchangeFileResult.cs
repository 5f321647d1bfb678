using Duskwright.Plan;
using Duskwright.Plan.Checks;

namespace Duskwright.Store.Exchange;

/// <summary>A file opened or saved, or everything that kept it from being so.</summary>
/// <param name="File">The file; none where there are problems.</param>
/// <param name="Problems">All problems.</param>
public sealed record ExchangeFileResult(ExchangeFile? File, ItemList<Problem> Problems);
