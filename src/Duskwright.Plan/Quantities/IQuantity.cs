namespace Duskwright.Plan.Quantities;

/// <summary>A physical quantity that is kept in the one unit in which the town document writes it.</summary>
/// <remarks>
/// The inner value is in the exchange unit (millimetres, milliamperes, hours), not in SI, so that a document read and
/// written again is the same to the last digit. SI is asked for by name (<c>Length.Metres</c>) at Study's door.
/// </remarks>
/// <typeparam name="TSelf">The quantity itself.</typeparam>
public interface IQuantity<TSelf>
    where TSelf : struct, IQuantity<TSelf>
{
    /// <summary>The ending of a field's name that tells its unit: <c>_mm</c>, <c>_ma</c>, <c>_ohm</c>.</summary>
    static abstract string FieldSuffix { get; }

    /// <summary>The value in the exchange unit.</summary>
    double Exchange { get; }

    /// <summary>Makes a quantity from a value in the exchange unit.</summary>
    /// <param name="value">Any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    static abstract TSelf FromExchange(double value);
}
