using Duskwright.Harness.Routes;

namespace Duskwright.Harness.Tests.Routes;

public class StreetGridTests
{
    // By geometry: on a full square grid the shortest way between two crossings is the sum of the two distances along the axes.
    [Fact]
    public void On_a_square_grid_of_wireways_a_pair_is_as_long_as_its_blocks() =>
        Gen.Select(Gen.Int[0, 4], Gen.Int[0, 4], Gen.Int[0, 4], Gen.Int[0, 4]).Sample((x, y, bankX, bankY) =>
        {
            var lines = Enumerable.Range(0, 5).SelectMany(i => new[]
            {
                new WirewayLine($"row {i}", [new(0, i), new(4, i)]),
                new WirewayLine($"column {i}", [new(i, 0), new(i, 4)]),
            });
            var answer = Router.Route([.. lines], [new RouteDemand("inn", new(x, y))], new(bankX, bankY), new RouteRules(0.1, 1.4))[0];
            return answer.NoRoute is null && Math.Abs(answer.LengthMetres - (Math.Abs(x - bankX) + Math.Abs(y - bankY) + 0.1)) < 1e-9;
        }, iter: 100);
}
