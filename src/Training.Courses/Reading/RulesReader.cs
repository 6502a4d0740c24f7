namespace Training.Courses;

/// <summary>Structure of <c>course.yaml</c>; words are added later.</summary>
internal sealed record CourseRules(
    SchemeKind Kind,
    DateOnly EffectiveFrom,
    DateOnly ReviewBy,
    Separation Separation,
    Terms Terms,
    IReadOnlyList<Duration> Remind,
    IReadOnlyList<AskedFor> Grant,
    IReadOnlyList<AskedFor> Renewal,
    IReadOnlyList<string> Topics,
    IReadOnlyList<string> Objectives,
    IReadOnlyList<NamedModule> Modules,
    Quiz Quiz,
    int QuizLine,
    IReadOnlyDictionary<string, int> Lines)
{
    public Transition? Transition { get; init; }

    /// <summary>What the transition asks besides, with its lines.</summary>
    public IReadOnlyList<AskedFor> Also { get; init; } = [];

    /// <summary>Everything that is asked of anybody.</summary>
    public IEnumerable<AskedFor> Asked => Grant.Concat(Renewal).Concat(Also);

    public int LineOf(string field, string id) => Lines.GetValueOrDefault($"{field} {id}", 1);
}

/// <summary>A requirement and where it stands.</summary>
internal sealed record AskedFor(Requirement Requirement, int Line, string Part);

/// <summary>A module as <c>course.yaml</c> names it.</summary>
internal sealed record NamedModule(string Id, string Topic, int Minutes, IReadOnlyList<string> Objectives, int Line);

/// <summary>Reads <c>course.yaml</c>.</summary>
internal static class RulesReader
{
    // docs/course-format.md, "course.yaml": where a scheme does not say.
    private static readonly IReadOnlyList<Duration> UsualReminders =
    [
        new(90, DurationUnit.Days), new(60, DurationUnit.Days), new(30, DurationUnit.Days), new(7, DurationUnit.Days),
    ];

    private static readonly string[] OfGrant = ["quiz", "checklist", "holds"];
    private static readonly string[] OfRenewal = [.. OfGrant, "practised"];

    public static CourseRules? Read(CourseFolder folder)
    {
        var path = folder.PathOf("course.yaml");
        var root = SourceNode.Read(folder.Files, path, folder.Problems);
        if (root is null) return null;
        if (root is not SourceNode.Map map)
        {
            folder.Problems.Add(new(CourseProblems.YamlShape, new(path, root.Line), "", "map"));
            return null;
        }

        var fields = new Fields(map, path, null, folder.Problems);
        var scheme = fields.Map("scheme", "scheme");
        var topicsNode = fields.Required("topics");
        var objectivesNode = fields.Required("objectives");
        var topics = fields.IdList("topics", topicsNode);
        var objectives = fields.IdList("objectives", objectivesNode);
        var modules = ReadModules(fields, topics, objectives);
        var quizFields = fields.Map("quiz", "quiz");
        var quiz = quizFields is null ? new Quiz("", 1, null, []) : ReadQuiz(quizFields, topics);
        fields.Finish();
        var lines = LinesOf("topic", topicsNode).Concat(LinesOf("objective", objectivesNode))
            .GroupBy(line => line.Key, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.First().Line, StringComparer.Ordinal);
        var rules = new CourseRules(
            SchemeKind.CertificateOfTraining, default, default, Separation.None, default!, [], [], [], // filled from the scheme below, or the course is dropped
            topics, objectives, modules, quiz, quizFields?.LineOf("id") ?? fields.Line, lines);
        return scheme is null ? null : ReadScheme(scheme, rules, folder.Id, folder.Problems);
    }

    private static IEnumerable<(string Key, int Line)> LinesOf(string kind, SourceNode? node) =>
        node is SourceNode.List list ? list.Items.OfType<SourceNode.Text>().Select(item => ($"{kind} {item.Value}", item.Line)) : [];

    private static CourseRules ReadScheme(Fields fields, CourseRules rules, string id, ICollection<Problem> problems)
    {
        var kind = fields.Choice("kind", ("certificate-of-training", SchemeKind.CertificateOfTraining), ("certification", SchemeKind.Certification));
        var from = fields.Date("effective-from");
        var review = fields.Date("review-by");
        if (from != default && review != default && review <= from) fields.Report(CourseProblems.DateOrder, fields.LineOf("review-by"), "review-by", "effective-from");
        var separation = fields.Choice("separation", ("none", Separation.None), ("teach-score-decide", Separation.TeachScoreDecide));
        if (kind == SchemeKind.Certification && separation == Separation.None && fields.Has("separation"))
        {
            fields.Report(CourseProblems.SeparationMissing, fields.LineOf("separation"));
        }

        var terms = new Terms(Validity(fields), fields.Duration("window"), fields.Duration("grace"));
        var remind = fields.Has("remind") ? fields.Durations("remind") : UsualReminders;
        var grant = ReadRequirements(fields, "grant", OfGrant, id, problems);
        var renewal = ReadRequirements(fields, "renewal", OfRenewal, id, problems);
        var (transition, also) = ReadTransition(fields, from, id, problems);
        fields.Finish();
        return rules with
        {
            Kind = kind, EffectiveFrom = from, ReviewBy = review, Separation = separation, Terms = terms, Remind = remind, Grant = grant, Renewal = renewal,
            Transition = transition, Also = also,
        };
    }

    private static (Transition? Transition, IReadOnlyList<AskedFor> Also) ReadTransition(
        Fields scheme, DateOnly from, string id, ICollection<Problem> problems)
    {
        if (!scheme.Has("transition") || scheme.Map("transition", "transition") is not { } fields) return (null, []);
        var mark = fields.Text("from");
        var isMark = mark.Length == SchemeRules.MarkLength && mark.All(char.IsAsciiHexDigitLower);
        if (mark.Length > 0 && !isMark) fields.Report(CourseProblems.TransitionMark, fields.LineOf("from"), mark);
        // One without the other says nothing: a day for nothing, or something without a day. Each misses the other.
        var isMore = fields.Has("also") || fields.Has("by");
        DateOnly? by = isMore ? fields.Date("by") : null;
        var also = isMore ? ReadRequirements(fields, "also", OfRenewal, id, problems) : [];
        if (by is { } last && last != default && from != default && last <= from)
            fields.Report(CourseProblems.DateOrder, fields.LineOf("by"), "by", "effective-from");
        fields.Finish();
        return (new(mark, by, [.. also.Select(asked => asked.Requirement)]), also);
    }

    private static Duration Validity(Fields fields)
    {
        var validity = fields.Duration("validity");
        if (validity.Count == 0 && Duration.TryParse(fields.OptionalText("validity"), out _))
        {
            fields.Report(CourseProblems.NumberRange, fields.LineOf("validity"), "validity", validity.ToString(), "P1D", "P9999Y");
        }

        return validity;
    }

    private static List<AskedFor> ReadRequirements(
        Fields scheme, string field, IReadOnlyList<string> allowed, string id, ICollection<Problem> problems)
    {
        var asked = new List<AskedFor>();
        foreach (var fields in scheme.Maps(field))
        {
            fields.Part = field;
            var names = allowed.Where(fields.Has).ToList();
            if (names.Count != 1)
            {
                fields.Report(CourseProblems.RequirementForm, fields.Line);
                continue;
            }

            asked.Add(new(ReadRequirement(fields, names[0]), fields.Line, field));
            fields.Finish();
        }

        foreach (var one in asked)
        {
            if (one.Requirement is Requirement.Holds holds && holds.SchemeId == id) Report(CourseProblems.HoldsItself, id);
            if (one.Requirement is not Requirement.PassedPractical { Subject: Subject.Live } practical) continue;
            var hasModel = asked.Any(other => other.Requirement is Requirement.PassedPractical { Subject: Subject.Model } model && model.ChecklistId == practical.ChecklistId);
            if (!hasModel) Report(CourseProblems.LiveWithoutModel, practical.ChecklistId);

            void Report(string code, string name) => problems.Add(new(code, new(scheme.File, one.Line, field), name));
        }

        return asked;
    }

    private static Requirement ReadRequirement(Fields fields, string name) => name switch
    {
        "quiz" => new Requirement.PassedQuiz(fields.Id("quiz"), fields.Duration("greatest-age")),
        "checklist" => new Requirement.PassedPractical(
            fields.Id("checklist"),
            fields.Choice("on", ("model", Subject.Model), ("live", Subject.Live)),
            fields.Duration("greatest-age")),
        "practised" => ReadPractice(fields),
        _ => new Requirement.Holds(fields.Id("holds")),
    };

    private static Requirement.Practised ReadPractice(Fields fields)
    {
        // Whatever it says: practice is counted on the model, and a field to say otherwise would be read as a choice.
        if (fields.OptionalText("on") is not null) fields.Report(CourseProblems.PracticeOnModelOnly, fields.LineOf("on"));
        return new(fields.Id("practised"), fields.Number("times", 1, Requirement.MostPractice), fields.Duration("within"));
    }

    private static List<NamedModule> ReadModules(Fields course, List<string> topics, List<string> objectives)
    {
        var modules = new List<NamedModule>();
        foreach (var fields in course.Maps("modules"))
        {
            var id = fields.Id("id");
            fields.Part = $"module {id}";
            var topic = fields.Id("topic");
            if (topic.Length > 0 && !topics.Contains(topic, StringComparer.Ordinal)) fields.Report(CourseProblems.TopicUnknown, fields.LineOf("topic"), topic);
            var served = fields.IdList("objectives", fields.Optional("objectives"));
            foreach (var unknown in served.Where(objective => !objectives.Contains(objective, StringComparer.Ordinal)))
            {
                fields.Report(CourseProblems.ObjectiveUnknown, fields.LineOf("objectives"), unknown);
            }

            var module = new NamedModule(id, topic, fields.Number("minutes", 1, 240), served, fields.Line);
            fields.Finish();
            if (modules.Any(known => known.Id == id) && id.Length > 0) fields.Report(CourseProblems.IdTwice, fields.LineOf("id"), id);
            else if (id.Length > 0) modules.Add(module);
        }

        return modules;
    }

    private static Quiz ReadQuiz(Fields fields, List<string> topics)
    {
        var id = fields.Id("id");
        var pass = fields.Number("pass", 1, 100);
        var cut = CutReader.Read(fields, pass);
        int? limit = fields.Has("time-limit") ? fields.Number("time-limit", 1, 600) : null;
        var retest = RetestReader.Find(fields);
        var rows = new List<BlueprintRow>();
        foreach (var row in fields.Maps("draw"))
        {
            var topic = row.Id("topic");
            row.Part = $"quiz topic {topic}";
            if (topic.Length > 0 && !topics.Contains(topic, StringComparer.Ordinal)) row.Report(CourseProblems.TopicUnknown, row.LineOf("topic"), topic);
            if (rows.Any(known => known.Topic == topic) && topic.Length > 0) row.Report(CourseProblems.IdTwice, row.LineOf("topic"), topic);
            var questions = row.Number("questions", 1, 200);
            rows.Add(new(topic, questions, row.Number("critical", 0, questions, absent: 0), row.Number("pass", 0, 100, absent: 0)));
            row.Finish();
        }

        fields.Finish();
        if (rows.Count == 0 && fields.Has("draw")) fields.Report(CourseProblems.FieldMissing, fields.LineOf("draw"), "draw");
        return new(id, pass, limit, [.. rows.OrderBy(row => topics.IndexOf(row.Topic))], retest) { Cut = cut };
    }
}
