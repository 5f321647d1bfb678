using System.Globalization;
using Duskwright.Plan.Document;

namespace Duskwright.Plan.Edits;

/// <summary>More houses like one, wall to wall at its right, as one edit.</summary>
/// <param name="First">The house they are like; its place says where it stands and how wide it is.</param>
/// <param name="Houses">How many houses the terrace has in all, the first among them.</param>
public sealed record AddTerrace(Building First, int Houses) : TownEdit
{
    /// <inheritdoc/>
    public override string Label => string.Create(CultureInfo.InvariantCulture, $"A terrace of {Houses} from {First.Name}");

    /// <inheritdoc/>
    public override Town Apply(Town town)
    {
        if (First.Place is not { Width: { } width } place)
        {
            return town;
        }

        var (sin, cos) = Math.SinCos(place.Rotation.Radians);
        for (var i = 1; i < Houses; i++)
        {
            var along = width.Millimetres * i;
            var there = place with { At = Point.At(Round(place.At.X.Millimetres + (along * cos)), Round(place.At.Y.Millimetres + (along * sin))) };
            town = AddBuilding.Named(town, First with { State = BuildingState.Idea, Code = null, FeedHole = null, PairLength = null, Note = null, Place = there }).Apply(town);
        }

        return town;
    }

    private static double Round(double millimetres) => Math.Round(millimetres, 1);
}
