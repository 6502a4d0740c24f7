using System.Globalization;

namespace Training.Courses;

/// <summary>Reads the <c>cut</c> beside a <c>pass</c>, where there is one; its words stand in <c>course.md</c>.</summary>
internal static class CutReader
{
    /// <param name="owner">The quiz or the checklist.</param>
    /// <param name="passPercent">What it is passed with.</param>
    public static Cut? Read(Fields owner, int passPercent)
    {
        if (!owner.Has("cut") || owner.Map("cut") is not { } fields) return null;
        var cut = new Cut(
            PanelOf(fields),
            fields.Choice("method", ("angoff", CutMethod.Angoff), ("hofstee", CutMethod.Hofstee), ("borderline-regression", CutMethod.BorderlineRegression)),
            fields.Date("set-on"),
            fields.Text("set-by"),
            fields.Number("judges", 1, 200),
            fields.Number("rounds", 1, 2),
            fields.Amount("mean", 0, 100),
            fields.Has("standard-error") ? fields.Amount("standard-error", 0, 100) : null);
        fields.Finish();
        var leadsTo = (int)Math.Ceiling(cut.Mean);
        if (leadsTo != passPercent)
        {
            fields.Report(CourseProblems.CutPass, fields.LineOf("mean"), Plain(cut.Mean), Plain(leadsTo), Plain(passPercent));
        }

        return cut;
    }

    /// <summary>The section of <c>course.md</c> that gives the reason for a cut.</summary>
    /// <param name="id">Of the quiz or checklist.</param>
    public static string SectionOf(string id) => $"cut-{id}";

    private static Guid PanelOf(Fields fields)
    {
        var text = fields.Text("panel");
        if (!Guid.TryParseExact(text, "D", out var id) && text.Length > 0) fields.Report(CourseProblems.CutPanel, fields.LineOf("panel"), text);
        return id;
    }

    private static string Plain(decimal number) => number.ToString(CultureInfo.InvariantCulture);
}
