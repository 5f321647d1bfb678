using Duskwright.Plan;

namespace Duskwright.Study.Questions;

/// <summary>Something a question needs to know: a field on the screen, an option on the command line.</summary>
/// <param name="Option">Its name: "lamps" for <c>--lamps</c>.</param>
/// <param name="Label">What is asked, with the unit: "How many lamps".</param>
public abstract record Asked(string Option, string Label);

/// <summary>A number that is asked for.</summary>
/// <param name="Option">Its name.</param>
/// <param name="Label">What is asked, with the unit.</param>
/// <param name="Usual">What a beginner usually has.</param>
/// <param name="Least">The least that is allowed.</param>
/// <param name="Most">The most that is allowed.</param>
public sealed record AskedNumber(string Option, string Label, double Usual, double Least, double Most) : Asked(Option, Label)
{
    /// <summary>Whether only whole numbers make sense.</summary>
    public bool Whole { get; init; }
}

/// <summary>One of a few things that is asked for.</summary>
/// <param name="Option">Its name.</param>
/// <param name="Label">What is asked.</param>
/// <param name="Usual">The id of what a beginner usually has.</param>
/// <param name="Choices">What there is to choose from.</param>
public sealed record AskedChoice(string Option, string Label, string Usual, ItemList<Choice> Choices) : Asked(Option, Label);

/// <summary>A thing to choose.</summary>
/// <param name="Id">Its id, as typed on the command line.</param>
/// <param name="Name">Its name.</param>
public sealed record Choice(string Id, string Name);
