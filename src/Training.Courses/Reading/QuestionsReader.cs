namespace Training.Courses;

/// <summary>Structure of one question; words are added later.</summary>
internal sealed record NamedQuestion(
    string Id,
    int Line,
    string Type,
    string Topic,
    string Objective,
    Difficulty Difficulty,
    bool IsCritical,
    Passage Passage,
    string FactId,
    IReadOnlyList<string> GuidanceIds,
    IReadOnlyList<string> OptionIds,
    QuestionKey Key,
    IReadOnlyList<string> Snakes,
    IReadOnlyList<Language> MachineMade);

/// <summary>Reads <c>questions.yaml</c>.</summary>
internal static class QuestionsReader
{
    private static readonly (string, string)[] Types = [.. new[] { "one", "several", "order", "number", "match", "spot" }.Select(type => (type, type))];

    private static readonly (string, Difficulty)[] Difficulties =
        [("easy", Difficulty.Easy), ("medium", Difficulty.Medium), ("hard", Difficulty.Hard)];

    private static readonly (string, Language)[] Languages = [.. LanguageTags.All.Select(language => (language.Tag(), language))];

    public static List<NamedQuestion> Read(CourseFolder folder, CourseRules rules)
    {
        var path = folder.PathOf("questions.yaml");
        var questions = new List<NamedQuestion>();
        foreach (var fields in Fields.ListOf(SourceNode.Read(folder.Files, path, folder.Problems), path, null, folder.Problems))
        {
            var id = fields.Id("id");
            fields.Part = $"question {id}";
            var question = ReadQuestion(id, fields, folder, rules);
            fields.Finish();
            if (questions.Any(known => known.Id == id) && id.Length > 0) fields.Report(CourseProblems.IdTwice, fields.LineOf("id"), id);
            else if (id.Length > 0) questions.Add(question);
        }

        CheckBlueprint(folder, rules, questions);
        return questions;
    }

    private static NamedQuestion ReadQuestion(string id, Fields fields, CourseFolder folder, CourseRules rules)
    {
        var type = fields.Choice("type", Types);
        var topic = fields.Id("topic");
        if (topic.Length > 0 && !rules.Topics.Contains(topic, StringComparer.Ordinal)) fields.Report(CourseProblems.TopicUnknown, fields.LineOf("topic"), topic);
        var objective = fields.Id("objective");
        if (objective.Length > 0 && !rules.Objectives.Contains(objective, StringComparer.Ordinal))
        {
            fields.Report(CourseProblems.ObjectiveUnknown, fields.LineOf("objective"), objective);
        }

        var factId = fields.Id("fact", Ids.IsFactId);
        folder.UseFact(factId, fields.File, fields.LineOf("fact"), fields.Part);
        var guidance = fields.IdList("guidance", fields.Optional("guidance"));
        foreach (var entry in guidance) folder.UseGuidance(entry, fields.File, fields.LineOf("guidance"), fields.Part);
        var snakes = fields.IdList("species", fields.Optional("species"));
        folder.Snakes.AddRange(snakes.Select(snake => new SnakeUse(snake, new(fields.File, fields.LineOf("species"), fields.Part))));
        var machine = fields.IdList("machine", fields.Optional("machine")).ConvertAll(tag => fields.Choose("machine", tag, Languages));
        var (options, key) = ReadAnswers(fields, type, folder);
        return new(
            id, fields.Line, type, topic, objective, fields.Choice("difficulty", Difficulties), fields.Flag("critical"),
            ReadPassage(fields, folder), factId, guidance, options, key, snakes, machine);
    }

    private static Passage ReadPassage(Fields fields, CourseFolder folder)
    {
        var text = fields.Text("passage");
        var hash = text.IndexOf('#', StringComparison.Ordinal);
        var passage = hash < 0 ? new Passage(text, "") : new Passage(text[..hash], text[(hash + 1)..]);
        var pages = folder.Pages.Values.Where(page => page.ModuleId == passage.ModuleId).ToList();
        var isThere = pages.Count > 0 && pages.TrueForAll(page => page.Sections.Contains(passage.Section));
        if (text.Length > 0 && !isThere) fields.Report(CourseProblems.PassageUnknown, fields.LineOf("passage"), text);
        return passage;
    }

    private static (IReadOnlyList<string> Options, QuestionKey Key) ReadAnswers(Fields fields, string type, CourseFolder folder)
    {
        if (type == "spot")
        {
            var spot = SpotReader.Read(fields, folder);
            return ([.. spot.Regions.Select(region => region.Id)], spot);
        }

        var options = ReadOptions(fields, type);
        return (options, type == "match" ? MatchReader.Read(fields, options) : ReadKey(fields, type, options));
    }

    private static List<string> ReadOptions(Fields fields, string type)
    {
        var options = fields.IdList("options", type == "number" ? fields.Optional("options") : fields.Required("options"));
        if (type == "number")
        {
            if (fields.Has("options")) fields.Report(CourseProblems.OptionCount, fields.LineOf("options"), "0");
            return [];
        }

        var least = type == "one" ? 2 : 3;
        if (fields.Has("options") && options.Count < least)
        {
            fields.Report(CourseProblems.OptionCount, fields.LineOf("options"), least.ToString(System.Globalization.CultureInfo.InvariantCulture));
        }

        return options;
    }

    private static QuestionKey ReadKey(Fields fields, string type, List<string> options)
    {
        var node = fields.Required("right", CourseProblems.KeyMissing);
        if (node is null) return new QuestionKey.One("");
        if (type == "number") return ReadNumber(fields);
        if (type == "one")
        {
            if (node is SourceNode.List several && several.Items.Count != 1)
            {
                fields.Report(CourseProblems.KeyNotOne, node.Line, several.Items.Count.ToString(System.Globalization.CultureInfo.InvariantCulture));
                return new QuestionKey.One("");
            }

            var right = fields.TextOf("right", node is SourceNode.List { Items: [var only] } ? only : node);
            CheckOption(fields, right, options, node.Line);
            return new QuestionKey.One(right);
        }

        var rights = fields.IdList("right", node);
        foreach (var right in rights) CheckOption(fields, right, options, node.Line);
        if (rights.Count == 0 && node is SourceNode.List) fields.Report(CourseProblems.KeyMissing, node.Line);
        if (type == "several") return new QuestionKey.Several(rights);
        if (rights.TrueForAll(right => options.Contains(right, StringComparer.Ordinal)) && rights.Count != options.Count) fields.Report(CourseProblems.KeyNotOrder, node.Line);
        return new QuestionKey.Order(rights);
    }

    internal static void CheckOption(Fields fields, string right, IReadOnlyList<string> options, int line)
    {
        if (right.Length > 0 && !options.Contains(right, StringComparer.Ordinal)) fields.Report(CourseProblems.OptionUnknown, line, right);
    }

    private static QuestionKey.Number ReadNumber(Fields fields)
    {
        if (fields.Map("right") is not { } right) return new QuestionKey.Number(0, 0, "");
        var key = new QuestionKey.Number(right.Amount("value", -1_000_000, 1_000_000), right.Amount("tolerance", 0, 1_000_000), right.Text("unit"));
        right.Finish();
        return key;
    }

    private static void CheckBlueprint(CourseFolder folder, CourseRules rules, List<NamedQuestion> questions)
    {
        foreach (var row in rules.Quiz.Blueprint.Where(row => rules.Topics.Contains(row.Topic, StringComparer.Ordinal)))
        {
            // A site may lack any snake, so those that ask about one do not count.
            var pool = questions.Where(question => question.Topic == row.Topic && question.Snakes.Count == 0).ToList();
            var critical = pool.Count(question => question.IsCritical);
            Compare(CourseProblems.BlueprintTotal, row.Questions, pool.Count);
            if (row.Questions > pool.Count) continue;
            Compare(CourseProblems.BlueprintCritical, row.Critical, critical);
            Compare(CourseProblems.BlueprintOther, row.Questions - row.Critical, pool.Count - critical);

            void Compare(string code, int asked, int there)
            {
                if (asked > there) folder.Problems.Add(new(code, new(folder.PathOf("course.yaml"), rules.QuizLine, $"quiz topic {row.Topic}"), row.Topic, $"{asked}", $"{there}"));
            }
        }
    }
}
