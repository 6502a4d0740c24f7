using Training.Documents.Typesetting;
using static Training.Documents.Typesetting.Look;

namespace Training.Documents.BitePlans;

/// <summary>Sizes and distances of the plan. Everything but the first block is set in one size of body type, as large as the page allows.</summary>
/// <param name="Body">Size of the body type, points.</param>
internal sealed record BitePlanLook(double Body)
{
    /// <summary>From the edge of the paper; most office printers cannot reach the outer 18 points.</summary>
    public const double Margin = 30;

    /// <summary>Between the two columns.</summary>
    public const double ColumnGap = 20;

    /// <summary>From the frame of the first block to its words.</summary>
    public const double Padding = 9;

    /// <summary>Parts that the left column may have of what both have; the one that makes them shortest is taken.</summary>
    public static readonly IReadOnlyList<double> LeftParts = [0.5, 0.53, 0.56, 0.59, 0.47, 0.44];

    /// <summary>The smallest body type: 9 points, read at arm's length.</summary>
    public const double LeastBody = 9;

    /// <summary>From the largest down; the first that fits is taken.</summary>
    public static readonly IReadOnlyList<BitePlanLook> Largest = [.. Enumerable.Range(0, 17).Select(step => new BitePlanLook(13 - (step * 0.25)))];

    public static readonly TextStyle Overdue = TextStyle.Of(FontRole.Strong, 22, Ink);
    public static readonly TextStyle OverdueSince = TextStyle.Of(FontRole.Strong, 12.5, Ink);
    /// <summary>Whom to call, on one line; with a number that has words beside it, on several.</summary>
    public static readonly TextStyle Call = new(FontRole.Strong, 36, 24, Ink, IsFirm: true);
    public static readonly TextStyle LongCall = new(FontRole.Strong, 24, 20, Ink, IsBalanced: true, IsFirm: true);
    public static readonly TextStyle Stamp = TextStyle.Of(FontRole.Strong, 11, Ochre);
    public static readonly TextStyle Note = TextStyle.Of(FontRole.Text, LeastBody, Ink);

    public TextStyle TheyDecide => TextStyle.Of(FontRole.Strong, Body + 4, Ink);

    public TextStyle Angles => TextStyle.Of(FontRole.Strong, Body + 6, Ink);

    /// <summary>What is entered for the first block: larger than the body by a step that can be seen.</summary>
    public TextStyle First => TextStyle.Of(FontRole.Strong, Body + 2, Ink);

    public TextStyle FirstLabel => TextStyle.Of(FontRole.Text, Body + 0.5, Ink);

    public TextStyle Heading => TextStyle.Of(FontRole.Strong, Body + 2.5, Ink);

    public TextStyle Number => TextStyle.Of(FontRole.Strong, Body + 5, Ink);

    public TextStyle Text => TextStyle.Of(FontRole.Text, Body, Ink);

    public TextStyle Strong => TextStyle.Of(FontRole.Strong, Body, Ink);
}
