namespace Training.Courses;

/// <summary>Converts lengths exactly: a foot is 30.48 cm and an inch 2.54 cm by definition (international yard and pound, 1959).</summary>
public static class Lengths
{
    /// <summary>Centimetres in a foot.</summary>
    public const decimal CentimetresInFoot = 30.48m;

    /// <summary>Centimetres in an inch.</summary>
    public const decimal CentimetresInInch = 2.54m;

    /// <summary>A length in centimetres, unrounded.</summary>
    /// <exception cref="ArgumentException">The quantity is no length (<c>cm</c> or <c>ft</c>).</exception>
    public static decimal InCentimetres(GuidanceValue.Quantity quantity) => quantity.Unit switch
    {
        "cm" => quantity.Amount,
        "ft" => quantity.Amount * CentimetresInFoot,
        _ => throw new ArgumentException($"'{quantity.Unit}' is no unit of length.", nameof(quantity)),
    };
}
