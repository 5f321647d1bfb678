using Duskwright.Plan;

namespace Duskwright.Study.Questions;

/// <summary>Every question that can be asked without a town, theme by theme.</summary>
public static class MakersQuestions
{
    /// <summary>The questions.</summary>
    public static ItemList<Question> All { get; } =
    [
        .. LampQuestions.All, .. PackQuestions.All, .. WireQuestions.All, .. HouseQuestions.All, .. WorkQuestions.All, .. FaultQuestions.All, .. PictureQuestions.All,
    ];

    /// <summary>One of them.</summary>
    /// <param name="verb">Its short name.</param>
    /// <returns>The question; none where there is no such.</returns>
    public static Question? Find(string? verb) => All.FirstOrDefault(q => q.Verb == verb);
}
