using Duskwright.Circuits.Wires;

namespace Duskwright.Circuits.Tests.Wires;

public sealed class WireHeatTests
{
    [Fact]
    public void Without_current_a_wire_is_as_warm_as_the_room() => Assert.Equal(23, WireHeat.SteadyCelsius(0, 0.2e-3, 23), 1e-12);

    // By hand from Fourier's law in a cylinder (Incropera and DeWitt, section 3.3, from memory): 0.2 mm copper carries 1 A, 0.5488 Ω/m at 20 °C,
    // card 2 mm round it. ln(2.1/0.1)/(2π·0.1) = 4.8455, 1/(2π·0.0021·10) = 7.5788 K·m/W; 6.818 K at 20 °C, with resistance rising 7.006 K.
    [Fact]
    public void A_fine_wire_with_an_ampere_warms_by_seven_kelvin() => Assert.Equal(27.006, WireHeat.SteadyCelsius(1, 0.2e-3), 0.002);

    [Fact]
    public void The_heat_made_at_the_settled_temperature_is_the_heat_carried_off() =>
        Gen.Select(Gen.Double[0.05, 2], Gen.Double[0.1, 1.0], Gen.Double[0, 35]).Sample((amps, millimetres, room) =>
        {
            var diameter = millimetres / 1e3;
            var celsius = WireHeat.SteadyCelsius(amps, diameter, room);
            if (celsius >= WireHeat.MostCelsius)
            {
                return true;
            }

            var inner = diameter / 2;
            var outer = inner + WireHeat.CardRoundMetres;
            var made = amps * amps * Copper.OhmsPerMetre(diameter, celsius);
            var surface = room + (made / (2 * Math.PI * outer * WireHeat.FilmWattsPerSquareMetreKelvin));
            var throughCard = (celsius - surface) * 2 * Math.PI * WireHeat.CardWattsPerMetreKelvin / Math.Log(outer / inner);
            return Math.Abs(throughCard - made) < 1e-9 * Math.Max(1, made);
        });

    [Fact]
    public void More_current_and_thinner_copper_are_hotter() =>
        Gen.Select(Gen.Double[0.05, 2], Gen.Double[0.1, 1.0]).Sample((amps, millimetres) =>
        {
            var celsius = WireHeat.SteadyCelsius(amps, millimetres / 1e3);
            return WireHeat.SteadyCelsius(amps * 1.1, millimetres / 1e3) >= celsius && WireHeat.SteadyCelsius(amps, millimetres / 1.1e3) >= celsius;
        });

    // Five amperes, which three AA cells can push (common practice, no source), destroy the finest wire.
    [Fact]
    public void A_short_through_the_finest_wire_runs_away() => Assert.Equal(WireHeat.MostCelsius, WireHeat.SteadyCelsius(5, 0.1e-3));
}
