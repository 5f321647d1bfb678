using Duskwright.Study.Sums;
using Duskwright.Towns;

namespace Duskwright.Places;

/// <summary>Quick questions: what is chosen so far, and its answer.</summary>
public partial class QuestionsPlace
{
    private static readonly (Question, string)[] Asked =
    [
        (Question.WhichResistor, "Which resistor?"), (Question.HowMany, "How many lamps?"), (Question.HowLong, "How long?"), (Question.WhichWire, "Which wire?"), (Question.WhichFuse, "Which fuse?"),
    ];

    private QuickQuestion _sum = new();

    private SumAnswer Answer => _sum.Answer();
}
