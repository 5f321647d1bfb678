using Duskwright.Plan.Checks;
using Duskwright.Study.Questions;

namespace Duskwright.Study.Tests.Questions;

/// <summary>What holds of every question, whatever is said.</summary>
public class AnyQuestionTests
{
    private static readonly Gen<(Question Question, Given Said)> Anything =
        from question in Gen.Int[0, MakersQuestions.All.Count - 1].Select(i => MakersQuestions.All[i])
        from draws in Gen.Double[0, 1].Array[question.Asks.Count]
        select (question, question.Asks.Select((asked, i) => (asked, draws[i])).Aggregate(Given.Nothing, (g, a) => a.asked switch
        {
            AskedNumber n => g.With(n, n.Whole ? Math.Round(n.Least + (a.Item2 * (Math.Min(n.Most, 60) - n.Least))) : n.Least * Math.Pow(n.Most / Math.Max(n.Least, 1e-3), n.Least > 0 ? a.Item2 : 1) is var v && double.IsFinite(v) ? Math.Clamp(v, n.Least, n.Most) : n.Least),
            AskedChoice c => g.With(c, c.Choices[(int)Math.Min(c.Choices.Count - 1, a.Item2 * c.Choices.Count)].Id),
            _ => g,
        }));

    [Fact]
    public void Whatever_the_fields_allow_is_answered_with_numbers_and_whole_sentences() =>
        Anything.Sample(
            asked =>
            {
                if (asked.Question.Refused(asked.Said) is not null)
                {
                    return;
                }

                var answer = asked.Question.Answer(asked.Said);
                Assert.True(double.IsFinite(answer.Headline.Value), $"{asked.Question.Verb}: {answer.Headline.Name} is {answer.Headline.Value}");
                Assert.DoesNotMatch(@"\{\d|NaN|∞", answer.Text + string.Concat(answer.Steps));
                Assert.All(answer.Figures, f => Assert.True(double.IsFinite(f.Value), $"{asked.Question.Verb}: {f.Name} is {f.Value}"));
                Assert.EndsWith(".", answer.Text, StringComparison.Ordinal);
                Assert.All(answer.Steps, s => Assert.EndsWith(".", s, StringComparison.Ordinal));
                if (answer.Town is { } town)
                {
                    Assert.Empty(TownChecks.Of(town));
                }
            },
            iter: 80);
}
