using Duskwright.Plan.Checks;
using Duskwright.Plan.Document;
using Duskwright.Plan.Parts;
using Duskwright.Plan.Quantities;
using Duskwright.Study.Sums;

namespace Duskwright.Towns;

/// <summary>The quick questions.</summary>
public enum Question
{
    WhichResistor,
    HowMany,
    HowLong,
    WhichWire,
    WhichFuse,
}

/// <summary>A quick question with what the maker has said so far; the rest is what a beginner usually has.</summary>
public sealed record QuickQuestion
{
    private static readonly Town Nowhere = new() { Name = "" };

    public Question Question { get; init; }

    public string Supply { get; init; } = "LR6";

    public int Series { get; init; } = 3;

    public string Lamp { get; init; } = "led-0603-warm-white";

    public double Milliamperes { get; init; } = 5;

    public double Ohms { get; init; } = 330;

    public double Hours { get; init; } = 8;

    public int Count { get; init; } = 20;

    public double LoadMilliamperes { get; init; } = 100;

    public double Centimetres { get; init; } = 100;

    public double DropVolts { get; init; } = 0.1;

    public string Wire { get; init; } = "cu-0.20";

    /// <summary>Why the supply is refused: more volts than may be touched; none where it may be asked about.</summary>
    public Problem? Refused => Question != Question.WhichWire && TownChecks.Of(Nowhere with { Supplies = [Asked] }) is [var problem, ..] ? problem : null;

    private Supply Asked => new() { Id = "1", Part = Supply, Series = Series };

    /// <summary>Answers it.</summary>
    /// <returns>The answer; meant for questions that are not <see cref="Refused"/>.</returns>
    public SumAnswer Answer()
    {
        var supply = Asked;
        var lamp = Catalogue.FindLamp(Nowhere, Lamp)!;
        return Question switch
        {
            Question.WhichResistor => QuickSums.WhichResistor(supply, lamp, Current.FromMilliamperes(Milliamperes)),
            Question.HowMany => QuickSums.HowManyLamps(supply, lamp, Resistance.FromOhms(Ohms), new Show { HoursPerDay = Duration.FromHours(Hours) }),
            Question.HowLong => QuickSums.HowLong(supply, lamp, Resistance.FromOhms(Ohms), Count, new Show()),
            Question.WhichWire => QuickSums.WhichWire(Length.FromMillimetres(Centimetres * 10), Current.FromMilliamperes(LoadMilliamperes), Voltage.FromVolts(DropVolts)),
            _ => QuickSums.WhichFuse(supply, Current.FromMilliamperes(LoadMilliamperes), Catalogue.FindWire(Nowhere, Wire)!, Length.FromMillimetres(Centimetres * 10)),
        };
    }
}
