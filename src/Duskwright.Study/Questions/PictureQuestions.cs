using Duskwright.Light.Camera;
using Duskwright.Plan;
using Duskwright.Plan.Parts;
using Duskwright.Study.Figures;
using Duskwright.Study.Sums;

namespace Duskwright.Study.Questions;

/// <summary>Pictures and films of the town.</summary>
internal static class PictureQuestions
{
    // Hall lights that follow the mains go fully on and off twice a turn: the worst case.
    private const double OnShare = 0.5;

    private static readonly AskedChoice Mains = new("mains", "Mains where you film", "50", [new("50", "50 Hz: Europe, Africa, most of Asia, Australia"), new("60", "60 Hz: North America, parts of Asia and South America")]);
    private static readonly AskedChoice Fed = new("fed", "The town's lamps hang on", "cells", [new("cells", "cells or a plain adaptor, no dimmer"), new("dimmer", "a dimmer that pulses"), new("flicker", "cells, and some are flickering lamps")]);
    private static readonly AskedNumber Shutter = new("shutter", "Shutter now, one over", 80, 1, 8000);

    internal static ItemList<Question> All { get; } =
    [
        new("film", Theme.Pictures, "Why do lamps flicker on film, and windows burn out?", [Mains, Fed, Shutter], Film) { Also = "camera photograph video", InTown = "night" },
    ];

    private static SumAnswer Film(Given given)
    {
        var hertz = given[Mains] == "60" ? 60.0 : 50;
        Figure Bands(double seconds, string name) => Figure.Given(name, Banding.Depth(2 * hertz, OnShare, seconds), "share", "a hall light that goes fully on and off twice a turn of the mains; lightest over darkest row", Certainty.Computed);
        var (now, tuned) = (Bands(1 / given[Shutter], "bands now"), Bands(1 / hertz, "bands then"));
        var shutter = Figure.Given("shutter", 1 / hertz, "s", "one turn of the mains, so that every row sees whole pulses", Certainty.Computed);
        return new SumAnswer
        {
            Headline = shutter,
            Words = given[Fed] switch
            {
                "dimmer" => "A dimmer that pulses makes bands of its own: film without it, with a larger resistor instead. For hall lights set the shutter to {0}: bands of {1} become {2}.",
                "flicker" => "Flickering lamps are meant to; what bands the picture is the hall's light. Set the shutter to {0}: bands of {1} become {2}.",
                _ => "Lamps on cells burn steadily and never band; hall lights do. Set the shutter to {0}, or twice or half that time: bands of {1} become {2}.",
            },
            Figures = [shutter, now, tuned],
            Steps =
            [
                "Expose for the windows; what burns out is lost, what is dark can be lifted.",
                "More light in the room, or less current in the lamps, brings house fronts and windows into one picture: the Night page says how much.",
                "Set white balance by hand and leave it; lamplight is what should look warm.",
                "Take three pictures, a stop apart, from a stand.",
            ],
            Warnings = given[Fed] == "flicker" ? ["Decorative flicker can disturb people who are sensitive to flashing light; say so where it is shown."] : [],
        };
    }
}
