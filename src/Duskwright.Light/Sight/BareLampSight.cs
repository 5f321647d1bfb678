using Duskwright.Light.Rooms;

namespace Duskwright.Light.Sight;

/// <summary>A bare lamp seen through a pane: its own face, unscattered.</summary>
public static class BareLampSight
{
    /// <summary>This many times the pane's mean, a point draws the eye ("meaningful" in a university's table of focal ratios; 40 "should not be exceeded").</summary>
    public const double DotRatio = 10;

    /// <summary>Luminance of the lamp's face through the pane, L = τ·(1 − h)·I ÷ A; the hot part of it may be smaller and brighter.</summary>
    /// <param name="candelasTowardsEye">Its intensity towards the eye, cd.</param>
    /// <param name="faceSquareMetres">The area of its shining face, m², more than zero.</param>
    /// <param name="sheet">What the pane is glazed with.</param>
    /// <returns>cd/m².</returns>
    public static double Luminance(double candelasTowardsEye, double faceSquareMetres, Glazing sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(faceSquareMetres);
        return sheet.Transmittance * (1 - sheet.Haze) * candelasTowardsEye / faceSquareMetres;
    }

    /// <summary>The coats of frosting after which the lamp no longer stands out of its pane as a dot.</summary>
    /// <param name="sheet">The pane as it is.</param>
    /// <param name="ratio">Luminance of the lamp's face over the pane's mean as it is.</param>
    /// <returns>0 to 4; none where more would be needed.</returns>
    /// <remarks>The pane's mean falls with each coat as its transmittance does, so only the unscattered share counts: ratio × qⁿ, q that of one coat.</remarks>
    public static int? CoatsToHide(Glazing sheet, double ratio)
    {
        for (var coats = 0; coats <= MostCoats; coats++)
        {
            if (ratio * (1 - Surfaces.PaneSheets.Coated(sheet, coats).Haze) <= DotRatio * (1 - sheet.Haze))
            {
                return coats;
            }
        }

        return null;
    }

    private const int MostCoats = 4;
}
