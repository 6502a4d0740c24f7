namespace Training.Courses;

/// <summary>The 50 states and the District of Columbia, ISO 3166-2:US.</summary>
public static class UsStates
{
    /// <summary>All codes.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        .. ("AL AK AZ AR CA CO CT DE DC FL GA HI ID IL IN IA KS KY LA ME MD MA MI MN MS MO MT NE NV NH NJ NM NY NC ND OH OK OR PA RI SC SD TN TX UT "
            + "VT VA WA WV WI WY").Split(' ').Select(code => $"US-{code}"),
    ];
}
