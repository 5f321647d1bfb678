using Duskwright.Light.Lamps;
using Duskwright.Light.Rooms;

namespace Duskwright.Light.Tests.Rooms;

// Source: tests/Reference/radiosity-checks.csv; each row names its own (furnace of Shirley 1991; zonal systems; energy balance).
public class InterreflectionTests
{
    private static readonly IReadOnlyList<IReadOnlyDictionary<string, string>> Rows = ReferenceRows.Of("radiosity-checks.csv");

    public static TheoryData<string> Ids(string method) =>
        [.. Rows.Where(r => r["scene"].StartsWith("unit cube", StringComparison.Ordinal) && r["method"].StartsWith(method, StringComparison.Ordinal)).Select(r => r["id"])];

    [Theory]
    [MemberData(nameof(Ids), "zonal")]
    [MemberData(nameof(Ids), "converged")]
    [MemberData(nameof(Ids), "direct only")]
    public void A_cube_with_one_shining_face_is_lit_as_published(string id)
    {
        var row = Rows.Single(r => r["id"] == id);
        var cube = new Cube(row["method"].StartsWith("zonal", StringComparison.Ordinal) ? 1 : 15, row.Input("reflectance_1"));
        var lux = cube.Lux(emitted: face => face == BoxFace.Floor ? 1 : 0);
        var found = row["output"] switch
        {
            "mean illuminance of source face" => cube.Mean(lux, BoxFace.Floor),
            "mean illuminance of opposite face" => cube.Mean(lux, BoxFace.Ceiling),
            "mean illuminance of each side face" => cube.Mean(lux, BoxFace.Left),
            "illuminance at the centre of the opposite face" => cube.Middle(lux, BoxFace.Ceiling),
            _ => cube.Middle(lux, BoxFace.Floor),
        };

        // A patch a fifteenth wide is not a point: its mean lies within 0.1 % of its middle.
        var tolerance = row["method"] == "direct only" ? 1e-3 : row.Number("tol_rel");
        Assert.Equal(row.Number("value"), found, row.Number("value") * tolerance);
    }

    [Theory]
    [InlineData("RAD-043")]
    [InlineData("RAD-044")]
    public void A_furnace_is_equally_bright_everywhere(string id)
    {
        var row = Rows.Single(r => r["id"] == id);
        var reflectance = row.Input("reflectance_1");
        var lux = new Cube(4, reflectance).Lux(emitted: _ => row.Input("emitted_1"));
        Assert.All(lux, e => Assert.Equal(1 / (1 - reflectance), 1 + (reflectance * e), 1e-8));
        Assert.Equal(row.Number("value"), 1 + (reflectance * lux[0]), 1e-6);
    }

    [Theory]
    [InlineData("WE-058")]
    [InlineData("WE-059")]
    [InlineData("WE-060")]
    public void A_furnace_of_any_shape_multiplies_its_own_light(string id)
    {
        // Source: tests/Reference/light-worked-examples.csv, L = Le/(1 − ρ).
        var row = ReferenceRows.Of("light-worked-examples.csv").Single(r => r["id"] == id);
        var reflectance = id == "WE-058" ? 128.0 / 255 : row.Input("reflectance_1");
        var (emitted, wanted) = (row.Input("emitted"), row.Number("value"));
        var lux = new Cube(3, reflectance).Lux(_ => emitted);
        Assert.All(lux, e => Assert.Equal(wanted, emitted + (reflectance * e), wanted * row.Number("tol_rel")));
    }

    [Fact]
    public void A_white_thing_vanishes_in_a_white_furnace()
    {
        // Row RAD-052: reflectance 1 in an environment of 1 shows 1. The patch throws back what it gets: one short of 1 by a millionth of a millionth.
        var row = Rows.Single(r => r["id"] == "RAD-052");
        var cube = new Cube(3, face => face == BoxFace.Floor ? 1 - 1e-12 : 0);
        var lux = cube.Lux(face => face == BoxFace.Floor ? 0 : 1);
        Assert.Equal(row.Number("value"), cube.Mean(lux, BoxFace.Floor), 1e-9);
        Assert.Equal(row.Number("value"), cube.Middle(lux, BoxFace.Floor), 1e-9);
    }

    [Theory]
    [InlineData("RAD-047")]
    [InlineData("RAD-048")]
    public void A_lamp_in_the_middle_of_a_cube_lights_every_face_by_the_energy_balance(string id)
    {
        var row = Rows.Single(r => r["id"] == id);
        var room = new LitRoom(new RoomBox(0.05, 0.05, 0.05, row.Input("reflectance_1")), [Bulb(0.05)], []);
        Assert.All(RoomTransfer.Of(room, RoomMesh.Usual).Lamps[0].FaceLux, lux => Assert.Equal(row.Number("value"), lux, row.Number("value") * row.Number("tol_rel")));
    }

    [Fact]
    public void A_lamp_in_the_middle_of_a_black_cube_lights_a_faces_middle_by_the_inverse_square()
    {
        var row = Rows.Single(r => r["id"] == "RAD-049");
        var hair = new Rectangle(0.025 - 1e-6, 0.025 + 1e-6, 0.025 - 1e-6, 0.025 + 1e-6);
        var lux = DirectLight.Lumens(new RoomBox(0.05, 0.05, 0.05, 0), BoxFace.Ceiling, hair, Bulb(0.05)) / hair.Area;
        Assert.Equal(row.Number("value"), lux, row.Number("value") * row.Number("tol_rel"));
    }

    [Theory]
    [InlineData("WE-073", 0.06, 0.04, 0.05)]
    [InlineData("WE-075", 0.08, 0.06, 0.05)]
    public void A_closed_rooms_walls_have_together_what_the_energy_balance_says(string id, double width, double depth, double height)
    {
        // Source: Sumpner (1893), E = Φ/(A(1 − ρ)), exact for any closed room of one reflectance.
        var row = ReferenceRows.Of("light-worked-examples.csv").Single(r => r["id"] == id);
        var box = new RoomBox(width, depth, height, row.Input("reflectance_1"));
        var lamp = new RoomLamp(new LampLobe(row.Input("flux_lm") / Math.PI, 2 * Math.PI / 3), new(width / 3, depth / 2, height / 4), new(0.2, 0.5, 1));
        var faces = RoomTransfer.Of(new LitRoom(box, [lamp], []), RoomMesh.Usual).Lamps[0].FaceLux;
        double[] areas = [depth * height, depth * height, width * height, width * height, width * depth, width * depth];
        Assert.Equal(row.Number("value"), faces.Zip(areas, (lux, area) => lux * area).Sum() / box.InsideArea, row.Number("value") * 1e-4);
    }

    private static RoomLamp Bulb(double side) => new(new LampLobe(1 / (4 * Math.PI), 2 * Math.PI), new(side / 2, side / 2, side / 2), new(0, 0, 1));

    /// <summary>A cube of side 1 m, each face cut into equal squares.</summary>
    private sealed class Cube
    {
        private readonly RoomBox _box = new(1, 1, 1, 0);
        private readonly RoomMesh _mesh;
        private readonly Func<BoxFace, double> _reflectance;

        internal Cube(int patches, double reflectance)
            : this(patches, _ => reflectance)
        {
        }

        internal Cube(int patches, Func<BoxFace, double> reflectance) => (_mesh, _reflectance) = (new RoomMesh(patches, 1), reflectance);

        internal IReadOnlyList<double> Lux(Func<BoxFace, double> emitted)
        {
            var grids = _mesh.Cut(_box, []);
            var count = grids.Sum(g => g.Count);
            double[] Each(Func<FaceGrid, double> value) => [.. grids.SelectMany(g => Enumerable.Repeat(value(g), g.Count))];
            var exchange = new double[count * count];
            ExchangeAreas.Fill(exchange, _box, grids, count);
            var solved = Interreflection.Solve(
                exchange, Each(g => g.Rectangle(g.First).Area), Each(g => _reflectance(g.Face)), new double[count], Each(g => emitted(g.Face)));
            Assert.True(solved.Converged);
            return solved.Lux;
        }

        internal double Mean(IReadOnlyList<double> lux, BoxFace face) => Grid(face) is var g ? lux.Skip(g.First).Take(g.Count).Average() : 0;

        internal double Middle(IReadOnlyList<double> lux, BoxFace face) => lux[Grid(face).PatchAt(0.5, 0.5)];

        private FaceGrid Grid(BoxFace face) => _mesh.Cut(_box, [])[(int)face];
    }
}
