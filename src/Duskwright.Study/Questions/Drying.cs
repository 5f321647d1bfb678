using Duskwright.Plan;

namespace Duskwright.Study.Questions;

/// <summary>How long glues, paints and fillers dry.</summary>
/// <param name="Id">Its short name.</param>
/// <param name="Name">What it is.</param>
/// <param name="Touch">Not to be touched.</param>
/// <param name="Next">Until the careful next step.</param>
/// <param name="Closed">Until it may be closed up or bears its full load.</param>
/// <param name="ClosedMost">The longer end of that, h.</param>
/// <remarks>About 20 °C, thin coats; cold or damp doubles them. Common practice, no source; the label comes first.</remarks>
internal sealed record Drying(string Id, string Name, string Touch, string Next, string Closed, double ClosedMost)
{
    internal static ItemList<Drying> Rows { get; } =
    [
        new("pva", "PVA on card or balsa", "10 to 30 min", "20 to 60 min held, 1 to 2 h handled", "18 to 24 h", 24),
        new("pva-thick", "PVA as a thick fillet or on foam", "1 to 2 h", "6 to 12 h", "24 to 72 h", 72),
        new("canopy", "canopy-type PVA on panes", "1 to 2 h", "4 to 6 h", "12 to 24 h, clear overnight", 24),
        new("super", "super glue", "10 to 60 s", "5 to 10 min", "24 h", 24),
        new("epoxy", "quick two-part epoxy", "5 to 30 min", "1 to 2 h", "24 to 72 h", 72),
        new("contact", "contact glue", "10 to 15 min open", "at once", "24 h", 24),
        new("hot", "hot glue", "30 to 60 s", "5 min", "10 min; it softens again at 60 to 80 °C", 0.17),
        new("decoupage", "decoupage medium", "15 to 30 min", "1 to 2 h between coats", "24 h", 24),
        new("acrylic", "acrylic craft paint", "10 to 30 min", "1 to 2 h for a second coat", "24 h before glue or tape", 24),
        new("primer", "acrylic spray primer", "10 to 30 min", "1 to 2 h", "24 h", 24),
        new("enamel", "solvent enamel paint", "4 to 8 h", "24 h", "3 to 7 days", 168),
        new("sealer", "sealing coat of PVA and water, both faces", "1 to 2 h", "12 h", "24 h a coat", 24),
        new("clay", "air-drying clay or filler", "2 to 6 h", "24 h", "24 to 72 h", 72),
        new("plaster", "plaster", "30 to 60 min", "24 h before paint", "2 to 7 days", 168),
        new("scatter", "scenic glue and scatter", "2 to 4 h", "12 h", "24 to 48 h, no power until dry", 48),
        new("resin", "poured resin, a layer of 3 mm", "12 to 24 h", "24 h for the next layer", "3 to 7 days", 168),
        new("uv", "UV resin", "1 to 3 min under its lamp", "at once", "5 to 10 min in strong light", 0.17),
        new("varnish", "nail varnish over a joint", "5 to 10 min", "30 min for a second coat", "1 to 2 h before power", 2),
        new("insulation", "liquid insulation", "10 to 20 min", "1 to 4 h", "24 h", 24),
    ];
}
