using Duskwright.Book.Diagrams;
using Duskwright.Book.Drawings;
using Duskwright.Book.Houses;
using Duskwright.Book.Plots;
using Duskwright.Plan.Document;
using Duskwright.Study;
using Duskwright.Study.Questions;
using Duskwright.Study.Sums;
using Microsoft.AspNetCore.Components;

namespace Duskwright.Places;

/// <summary>Questions that need no town: what is asked, what was said so far, and the answer.</summary>
public partial class QuestionsPlace
{
    // A circuit of more lamps says nothing at a glance.
    private const int MostDrawnLamps = 6;

    private Given _said = Given.Nothing;
    private string _word = "";
    private string? _told;
    private (Question Question, Given Said, SumAnswer Answer)? _answered;

    /// <summary>The short name of the question asked; none while one is chosen.</summary>
    [Parameter]
    public string? Verb { get; set; }

    private Question? Chosen => MakersQuestions.Find(Verb);

    private IEnumerable<IGrouping<Theme, Question>> Found => MakersQuestions.All.Where(q => Matches(q, _word)).GroupBy(q => q.Theme);

    private SumAnswer Answer
    {
        get
        {
            if (_answered is not { } last || last.Question != Chosen || last.Said != _said)
            {
                _answered = last = (Chosen!, _said, Chosen!.Answer(_said));
            }

            return last.Answer;
        }
    }

    /// <summary>The little town of the answer: how its pack fades, its house's front, or its circuit.</summary>
    private Drawing? Picture => Answer.Town is { } town && TownStudy.Of(town) is var study
        ? study.Buildings.FirstOrDefault(b => b.Building.Storeys.Count > 0) is { } house ? HouseElevation.Of(house, WallSide.Front, 2, 1)
            : Chosen!.Theme == Theme.Packs && study.Packs is [{ Fade: not null, HoursToSpoiled: { } last } pack] ? FadePlot.Of(pack, Math.Ceiling(last.Value), null)
            : study.Lamps.Count <= MostDrawnLamps ? CircuitDiagram.Of(study)[0].Pages[0] : null
        : null;

    protected override void OnParametersSet() => (_said, _told) = (Chosen is { } question ? Usual(question) : Given.Nothing, null);

    // A field shows what it stands for from the start.
    private static Given Usual(Question question) => question.Asks.Aggregate(Given.Nothing, (given, asked) => asked switch
    {
        AskedNumber number => given.With(number, number.Usual),
        AskedChoice choice => given.With(choice, choice.Usual),
        _ => given,
    });

    private static bool Matches(Question question, string word) => word.Split(' ', StringSplitOptions.RemoveEmptyEntries)
        .All(w => question.Words.Contains(w, StringComparison.OrdinalIgnoreCase) || question.Also.Contains(w, StringComparison.OrdinalIgnoreCase) || question.Asks.Any(a => a.Label.Contains(w, StringComparison.OrdinalIgnoreCase)));

    private static string Heading(Theme theme) => theme switch
    {
        Theme.Lamps => "Lamps and resistors",
        Theme.Packs => "Cells, packs, adaptors",
        Theme.Wires => "Wire, holes, switches",
        Theme.Houses => "Building a house",
        Theme.Work => "Hours and money",
        Theme.Faults => "Something is dark or hot",
        Theme.Pictures => "Pictures and films",
        _ => throw new ArgumentOutOfRangeException(nameof(theme), theme, "This theme has no heading."),
    };

    private void Say(Given said) => (_said, _told) = (said, null);

    private void Put() => _told = Open.Apply(Chosen!.Into(_said, Open.Town)!) is [var problem, ..]
        ? $"{problem.Message} {problem.Remedy}"
        : $"Put into {Open.Town.Name}; it can be undone there.";

    private void Begin()
    {
        if (Open.Begin(Answer.Town!) is [var problem, ..])
        {
            _told = $"{problem.Message} {problem.Remedy}";
            return;
        }

        Navigation.NavigateTo("/town");
    }
}
