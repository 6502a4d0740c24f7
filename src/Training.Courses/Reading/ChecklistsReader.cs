namespace Training.Courses;

/// <summary>Structure of one checklist; words are added later.</summary>
internal sealed record NamedChecklist(
    string Id,
    int Line,
    ChecklistKind Kind,
    int PassPercent,
    Cut? Cut,
    int? TimeLimitMinutes,
    RetestRules? Retest,
    IReadOnlyList<Subject> Subjects,
    IReadOnlyList<NamedStep> Steps);

/// <summary>A step and its line.</summary>
internal sealed record NamedStep(ChecklistStep Step, int Line);

/// <summary>Reads <c>checklists.yaml</c>, where a course has one.</summary>
internal static class ChecklistsReader
{
    public static List<NamedChecklist> Read(CourseFolder folder, CourseRules rules)
    {
        var path = folder.PathOf("checklists.yaml");
        var checklists = new List<NamedChecklist>();
        if (folder.Files.Find(path) is null) return checklists;
        foreach (var fields in Fields.ListOf(SourceNode.Read(folder.Files, path, folder.Problems), path, null, folder.Problems))
        {
            var id = fields.Id("id");
            fields.Part = $"checklist {id}";
            var pass = fields.Number("pass", 1, 100);
            var kind = fields.OptionalText("kind") is { } name
                ? fields.Choose("kind", name, [("handling", ChecklistKind.Handling), ("drill", ChecklistKind.Drill)])
                : ChecklistKind.Handling;
            var checklist = new NamedChecklist(
                id, fields.Line, kind, pass, CutReader.Read(fields, pass), ReadTimeLimit(fields, kind), RetestReader.Find(fields), ReadSubjects(fields),
                ReadSteps(fields, folder, rules));
            fields.Finish();
            if (checklists.Any(known => known.Id == id) && id.Length > 0) fields.Report(CourseProblems.IdTwice, fields.LineOf("id"), id);
            else if (id.Length > 0) checklists.Add(checklist);
        }

        return checklists;
    }

    // No handling step is ever timed: haste puts a hand inside reach.
    private static int? ReadTimeLimit(Fields fields, ChecklistKind kind)
    {
        if (!fields.Has("time-limit")) return null;
        var minutes = fields.Number("time-limit", 1, 60);
        if (kind == ChecklistKind.Handling) fields.Report(CourseProblems.HandlingTimed, fields.LineOf("time-limit"));
        return minutes;
    }

    private static List<Subject> ReadSubjects(Fields fields)
    {
        var subjects = fields.IdList("on", fields.Required("on"))
            .ConvertAll(name => fields.Choose("on", name, [("model", Subject.Model), ("live", Subject.Live)]));
        if (subjects.Count == 0 && fields.Has("on")) fields.Report(CourseProblems.FieldMissing, fields.LineOf("on"), "on");
        return subjects;
    }

    private static List<NamedStep> ReadSteps(Fields checklist, CourseFolder folder, CourseRules rules)
    {
        var steps = new List<NamedStep>();
        foreach (var fields in checklist.Maps("steps"))
        {
            var id = fields.Id("id");
            fields.Part = $"step {id}";
            var objective = fields.Id("objective");
            if (objective.Length > 0 && !rules.Objectives.Contains(objective, StringComparer.Ordinal))
            {
                fields.Report(CourseProblems.ObjectiveUnknown, fields.LineOf("objective"), objective);
            }

            var factId = fields.Id("fact", Ids.IsFactId);
            folder.UseFact(factId, fields.File, fields.LineOf("fact"), fields.Part);
            var mayBePrompted = fields.OptionalText("prompt") is { } prompt && fields.Choose("prompt", prompt, [("allowed", true)]);
            var step = new ChecklistStep(id, objective, fields.Flag("critical"), mayBePrompted, factId);
            fields.Finish();
            if (steps.Any(known => known.Step.Id == id) && id.Length > 0) fields.Report(CourseProblems.IdTwice, fields.LineOf("id"), id);
            else if (id.Length > 0) steps.Add(new(step, fields.Line));
        }

        if (steps.Count == 0 && checklist.Has("steps")) checklist.Report(CourseProblems.FieldMissing, checklist.LineOf("steps"), "steps");
        return steps;
    }
}
