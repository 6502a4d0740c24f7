namespace Training.Courses;

/// <summary>Reads <c>retest</c> of a quiz or a checklist, where it has one.</summary>
internal static class RetestReader
{
    public static RetestRules? Find(Fields fields)
    {
        if (!fields.Has("retest") || fields.Map("retest", $"{fields.Part} retest".Trim()) is not { } retest) return null;
        var rules = new RetestRules(retest.Duration("wait"), retest.Number("most", 1, 20), retest.Duration("within"));
        retest.Finish();
        return rules;
    }
}
