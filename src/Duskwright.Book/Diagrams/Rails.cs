namespace Duskwright.Book.Diagrams;

/// <summary>The upright conductors of a circuit. From left to right each kind has its own place, and no two of a kind reach past the same line: nothing can cross.</summary>
internal static class Rails
{
    internal const double PackMinus = 5;
    internal const double PackPlus = 46;
    internal const double Switched = 66;
    internal const double HousePlus = 96;
    internal const double HouseMinus = 148;
    internal const double Minus = 174;

    // The way back along the top joins the minus of the houses and that of the packs.
    internal const int Top = -1;

    internal static IReadOnlyList<Rail> Of(IReadOnlyList<CircuitRow> rows)
    {
        var numbered = rows.Select((r, i) => (Row: r, At: i)).ToList();
        return
        [
            new Rail(PackMinus, "packs −", false, [Top, .. numbered.Where(r => r.Row.First.Pack).Select(r => r.At)]),
            .. numbered.GroupBy(r => r.Row.Pack).Select(g => new Rail(PackPlus, $"pack {g.Key.Number} +", true, [.. g.Where(r => r.Row.First.Group).Select(r => r.At)])),
            .. numbered.GroupBy(r => r.Row.Group.Id).Select(g => new Rail(Switched, $"{g.Key} +", true, [.. g.Where(r => r.Row.First.House).Select(r => r.At)])),
            .. numbered.GroupBy(r => r.Row.HouseKey).SelectMany(g => (Rail[])
            [
                new(HousePlus, $"{g.First().Row.House.Code} +", true, [.. g.Select(r => r.At)]),
                new(HouseMinus, $"{g.First().Row.House.Code} −", false, [.. g.Select(r => r.At)]),
            ]),
            new Rail(Minus, "houses −", false, [Top, .. numbered.Where(r => r.Row.First.House).Select(r => r.At)]),
        ];
    }
}
