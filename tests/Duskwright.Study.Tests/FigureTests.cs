using Duskwright.Study.Figures;

namespace Duskwright.Study.Tests;

public class FigureTests
{
    [Fact]
    public void Every_figure_computed_again_from_its_inputs_gives_its_value()
    {
        var figures = All(TownStudy.Of(Demo.Saltmarrow)).Concat(All(TownStudy.Of(Demo.Tavern))).ToList();
        Assert.True(figures.Count > 500);
        Assert.All(figures, f => Assert.Equal(f.Value, f.Evaluate(), Math.Abs(f.Value) * 1e-12));
    }

    [Fact]
    public void Every_figure_names_a_source() =>
        Assert.All(All(TownStudy.Of(Demo.Saltmarrow)).SelectMany(WithInputs), f => Assert.False(string.IsNullOrWhiteSpace(f.Source), f.Name));

    [Fact]
    public void A_lamps_current_through_its_resistor_is_what_the_network_found()
    {
        // The pack's load is the network's own sum over its lamps; the lamps' figures are worked out one by one by Ohm's law.
        var study = TownStudy.Of(Demo.Saltmarrow);
        Assert.All(study.Packs, p => Assert.Equal(p.Load!.Value, study.Lamps.Where(l => l.Supply == p.Supply.Id).Sum(l => l.Current!.Value), 1e-9));
    }

    private static IEnumerable<Figure> WithInputs(Figure figure) => figure.Inputs.SelectMany(WithInputs).Prepend(figure);

    private static IEnumerable<Figure> All(TownStudy study) =>
        study.Findings.SelectMany(f => f.Figures)
            .Concat(study.Lamps.SelectMany(l => new[] { l.Resistor, l.ResistorPower, l.Current, l.Volts, l.PaneLuminance, l.ReadsAsLitTo }.OfType<Figure>()))
            .Concat(study.Packs.SelectMany(p => new[] { p.Load, p.Volts, p.HoursToDim, p.HoursToSpoiled, p.ShortCircuit?.Current, p.ShortCircuit?.WireTemperature }.OfType<Figure>()))
            .Concat(study.Buildings.SelectMany(b => new[] { b.Current, b.PairLength, b.PairDrop }.OfType<Figure>()))
            .Concat(study.Scenes.SelectMany(s => s.Packs).SelectMany(p => new[] { p.Load, p.HoursToDim, p.HoursToSpoiled, p.Worst?.Lightness }.OfType<Figure>()))
            .Concat(study.PartsList.Select(p => p.Cost).OfType<Figure>())
            .Append(study.PartsCost);

    [Theory]
    [InlineData(0.99998, "A", "1\u2009A")]
    [InlineData(0.9991, "A", "999\u2009mA")]
    [InlineData(0.0439, "A", "43.9\u2009mA")]
    [InlineData(1.36, "m", "1.36\u2009m")]
    [InlineData(0.999999, "W", "1\u2009W")]
    public void Values_take_the_prefix_that_their_digits_want(double value, string unit, string text) => Assert.Equal(text, FigureText.Of(value, unit));
}
