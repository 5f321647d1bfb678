using Duskwright.Plan.Parts;
using Duskwright.Towns;

namespace Duskwright.Tests.Towns;

/// <summary>The quick questions, asked with anything their fields allow.</summary>
public class QuickQuestionTests
{
    private static readonly Gen<QuickQuestion> Asked =
        from question in One(Enum.GetValues<Question>())
        from supply in One([.. Catalogue.Parts.Supplies.Select(s => s.Id)])
        from lamp in One([.. Catalogue.Parts.Lamps.Select(l => l.Id)])
        from wire in One([.. Catalogue.Parts.Wires.Select(w => w.Id)])
        from series in Gen.Int[1, 12]
        from milliamperes in Gen.OneOf(Gen.Double[0.1, 30], One(0.1, 30.0))
        from ohms in Gen.OneOf(Gen.Double[0, 1000], One(0.0, 0.001, 100_000.0))
        from hours in Gen.Double[0.5, 24]
        from count in Gen.OneOf(Gen.Int[1, 60], One(1, 500))
        from load in Gen.OneOf(Gen.Double[1, 5000], One(1, 5000.0))
        from far in Gen.OneOf(Gen.Double[1, 5000], One(1, 5000.0))
        from drop in Gen.Double[0.01, 5]
        select new QuickQuestion
        {
            Question = question,
            Supply = supply,
            Lamp = lamp,
            Wire = wire,
            Series = series,
            Milliamperes = milliamperes,
            Ohms = ohms,
            Hours = hours,
            Count = count,
            LoadMilliamperes = load,
            Centimetres = far,
            DropVolts = drop,
        };

    [Fact]
    public void Whatever_the_fields_allow_is_answered_with_a_number_and_whole_sentences() =>
        Asked.Sample(
            asked =>
            {
                var answer = asked.Answer();
                Assert.True(double.IsFinite(answer.Headline.Value), $"{answer.Headline.Name} is {answer.Headline.Value}");
                Assert.DoesNotMatch(@"\{\d|NaN|∞", answer.Text);
                Assert.All(answer.Figures, f => Assert.True(double.IsFinite(f.Value), $"{f.Name} is {f.Value}"));
                Assert.EndsWith(".", answer.Text, StringComparison.Ordinal);
            },
            iter: 150);

    // Source: IEC 61140 as told by a transformer glossary, 60 V d.c., row touchable_without_insulation_dc of tests/Reference/safety-limits.csv.
    [Theory]
    [InlineData("adaptor-12v", 5, false)]
    [InlineData("adaptor-12v", 6, true)]
    [InlineData("6LR61", 6, false)]
    [InlineData("6LR61", 7, true)]
    public void More_than_sixty_volts_is_refused_before_it_is_reckoned_with(string supply, int series, bool refused)
    {
        var asked = new QuickQuestion { Supply = supply, Series = series };
        Assert.Equal(refused ? "mains" : null, asked.Refused?.Rule);
        Assert.Null((asked with { Question = Question.WhichWire }).Refused);
    }

    private static Gen<T> One<T>(params T[] of) => Gen.Int[0, of.Length - 1].Select(i => of[i]);
}
