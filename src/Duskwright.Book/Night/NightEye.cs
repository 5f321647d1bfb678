using System.Numerics;
using Duskwright.Plan.Document;

namespace Duskwright.Book.Night;

/// <summary>Where somebody stands to look.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="At">The eye, m.</param>
/// <param name="To">What it looks at, m.</param>
public sealed record NightEye(string Name, Vector3 At, Vector3 To)
{
    /// <summary>Height of the picture, degrees.</summary>
    public const float FieldDegrees = 34;

    private const double UsualEyeMillimetres = 450;

    internal static IEnumerable<NightEye> Of(Town town, NightGround ground)
    {
        var (width, depth) = (ground.Width, ground.Depth);
        var reach = Math.Max(width, depth * 1.3f);
        yield return new NightEye("from above", new Vector3(-0.1f * width, 0.5f * reach, (depth / 2) + (0.52f * reach)), new Vector3(0, 0, 0.06f * depth));
        yield return new NightEye("low over the front edge", new Vector3(0.1f * width, 0.2f * reach, (depth / 2) + (0.42f * reach)), new Vector3(-0.03f * width, 0.04f, -0.1f * depth));
        foreach (var position in town.Show.ViewingPositions)
        {
            var at = ground.At(position.At, (position.EyeHeight?.Millimetres ?? UsualEyeMillimetres) / 1000);
            yield return new NightEye(position.Name, at, new Vector3(0.2f * at.X, 0.03f, 0));
        }
    }
}
