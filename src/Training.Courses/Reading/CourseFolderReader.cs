namespace Training.Courses;

/// <summary>What reading one folder gave besides findings.</summary>
/// <param name="Rules">For the checks across courses.</param>
/// <param name="Checklists">Likewise.</param>
/// <param name="Questions">For the house rules.</param>
/// <param name="Coverage">What teaches and asks for each objective.</param>
/// <param name="GuidanceUses">Where it names guidance.</param>
/// <param name="Snakes">Where it says which snakes something is about.</param>
/// <param name="Draft">The course as it can be shown to its author, findings or not.</param>
/// <param name="Course">The course, where it has no finding.</param>
/// <param name="Snapshot">Its snapshot, likewise.</param>
internal sealed record ReadFolder(
    CourseRules Rules,
    IReadOnlyList<NamedChecklist> Checklists,
    IReadOnlyList<NamedQuestion> Questions,
    IReadOnlyList<ObjectiveCoverage> Coverage,
    IReadOnlyList<GuidanceUse> GuidanceUses,
    IReadOnlyList<SnakeUse> Snakes,
    Course Draft,
    Course? Course,
    CourseSnapshot? Snapshot);

/// <summary>Reads one course folder whole; needs no other folder.</summary>
internal static class CourseFolderReader
{
    /// <summary>Null where not even course.yaml can be read.</summary>
    public static ReadFolder? Read(CourseFiles files, string id, SharedSources shared, ModuleAddress address, ICollection<Problem> problems)
    {
        var before = problems.Count;
        var folder = new CourseFolder(files, id, shared, address, problems);
        if (!Ids.IsId(id)) problems.Add(new(CourseProblems.IdForm, new(folder.PathOf("course.yaml")), id));
        if (RulesReader.Read(folder) is not { } rules) return null;
        var pages = ModuleWordsReader.ReadFiles(folder, rules);
        folder.ReadFigures();
        var questions = QuestionsReader.Read(folder, rules);
        var checklists = ChecklistsReader.Read(folder, rules);
        CheckFiles(folder, rules);
        var coverage = CheckObjectives(folder, rules, questions, checklists);
        CheckOwnRequirements(folder, rules, checklists);
        var modules = ModuleWordsReader.Read(folder, rules, pages);
        string[] cuts =
        [
            .. rules.Quiz.Cut is null ? [] : new[] { rules.Quiz.Id },
            .. checklists.Where(checklist => checklist.Cut is not null).Select(checklist => checklist.Id),
        ];
        var words = LanguageTags.All
            .Select(language => (Language: language, Words: SchemeWordsReader.Read(folder, rules, cuts, language)))
            .Where(read => read.Words is not null)
            .ToDictionary(read => read.Language, read => read.Words!.Value); // seen on the line above
        var course = new Course(
            id,
            "",
            SchemeOf(id, rules, words.ToDictionary(word => word.Key, word => word.Value.Scheme)),
            rules.Topics,
            rules.Objectives,
            modules,
            ReadQuestions(folder, questions),
            rules.Quiz,
            ReadChecklists(folder, checklists),
            words.ToDictionary(word => word.Key, word => word.Value.Course),
            [.. folder.Guidance.Select(folder.Shared.Guidance.Find).OfType<GuidanceEntry>()]);
        CheckFigures(folder);
        TranslationReader.Check(folder);
        var read = new ReadFolder(rules, checklists, questions, coverage, folder.GuidanceUses, folder.Snakes, course, null, null);
        if (problems.Count > before) return read;
        var snapshot = CourseSnapshot.Of(folder);
        return read with { Course = course with { Hash = snapshot.Hash }, Snapshot = snapshot };
    }

    private static Scheme SchemeOf(string id, CourseRules rules, Dictionary<Language, SchemeWords> words) => new(
        id, rules.Kind, rules.EffectiveFrom, rules.ReviewBy, rules.Separation, rules.Terms, rules.Remind,
        [.. rules.Grant.Select(asked => asked.Requirement)], [.. rules.Renewal.Select(asked => asked.Requirement)], words)
    {
        Transition = rules.Transition,
    };

    private static List<Question> ReadQuestions(CourseFolder folder, List<NamedQuestion> questions)
    {
        var words = LanguageTags.All.ToDictionary(language => language, language => QuestionWordsReader.Read(folder, questions, language));
        return questions.ConvertAll(question =>
        {
            var own = Own(words, question.Id);
            return new Question(
                question.Id, question.Topic, question.Objective, question.Difficulty, question.IsCritical, question.Passage, question.FactId,
                question.GuidanceIds, question.OptionIds, question.Key, WordsOf(own),
                Versions.Of(question, folder, SourcesOf(own), own.Values.SelectMany(read => read.Guidance)))
            {
                Snakes = question.Snakes,
                MachineMade = question.MachineMade,
            };
        });
    }

    private static List<Checklist> ReadChecklists(CourseFolder folder, List<NamedChecklist> checklists)
    {
        var words = LanguageTags.All.ToDictionary(language => language, language => ChecklistWordsReader.Read(folder, checklists, language));
        return checklists.ConvertAll(checklist =>
        {
            var own = Own(words, checklist.Id);
            return new Checklist(
                checklist.Id, checklist.PassPercent, checklist.Subjects, [.. checklist.Steps.Select(step => step.Step)], WordsOf(own),
                Versions.Of(checklist, folder, SourcesOf(own), own.Values.SelectMany(read => read.Guidance)), checklist.Kind, checklist.TimeLimitMinutes,
                checklist.Retest)
            {
                Cut = checklist.Cut,
            };
        });
    }

    private static Dictionary<Language, ReadWords<T>> Own<T>(Dictionary<Language, Dictionary<string, ReadWords<T>>> words, string id) => words
        .Where(language => language.Value.ContainsKey(id))
        .ToDictionary(language => language.Key, language => language.Value[id]);

    private static Dictionary<Language, T> WordsOf<T>(Dictionary<Language, ReadWords<T>> words) => words.ToDictionary(word => word.Key, word => word.Value.Words);

    private static Dictionary<Language, string> SourcesOf<T>(Dictionary<Language, ReadWords<T>> words) => words.ToDictionary(word => word.Key, word => word.Value.Source);

    private static void CheckFiles(CourseFolder folder, CourseRules rules)
    {
        var hasChecklists = folder.Files.Find(folder.PathOf("checklists.yaml")) is not null;
        var expected = new HashSet<string>(StringComparer.Ordinal) { folder.PathOf("course.yaml"), folder.PathOf("questions.yaml"), folder.PathOf("checklists.yaml") };
        foreach (var language in LanguageTags.All)
        {
            expected.Add(folder.PathOf(language, "course.md"));
            expected.Add(folder.PathOf(language, "questions.md"));
            if (hasChecklists) expected.Add(folder.PathOf(language, "checklists.md"));
            expected.Add(folder.PathOf(language, Translation.FileName));
            foreach (var module in rules.Modules) expected.Add(folder.PathOf(language, $"modules/{module.Id}.md"));
        }

        foreach (var path in folder.Files.Paths.Where(path => path.StartsWith(folder.PathOf(""), StringComparison.Ordinal)))
        {
            if (!expected.Contains(path) && !folder.HasFigure(path)) folder.Problems.Add(new(CourseProblems.FileUnexpected, new(path)));
        }
    }

    private static void CheckFigures(CourseFolder folder)
    {
        foreach (var path in folder.FigurePaths.Where(path => !folder.ShownFigures.Contains(path)))
        {
            folder.Problems.Add(new(CourseProblems.FigureUnused, new(path)));
        }
    }

    private static List<ObjectiveCoverage> CheckObjectives(
        CourseFolder folder, CourseRules rules, List<NamedQuestion> questions, List<NamedChecklist> checklists)
    {
        var coverage = rules.Objectives.Select(objective => new ObjectiveCoverage(
            folder.Id,
            objective,
            [.. rules.Modules.Where(module => module.Objectives.Contains(objective, StringComparer.Ordinal)).Select(module => module.Id)],
            questions.Count(question => question.Objective == objective),
            checklists.SelectMany(checklist => checklist.Steps).Count(step => step.Step.Objective == objective))).ToList();
        foreach (var row in coverage.Where(row => row.Questions + row.Steps == 0))
        {
            folder.Problems.Add(new(
                CourseProblems.ObjectiveUnassessed,
                new(folder.PathOf("course.yaml"), rules.LineOf("objective", row.ObjectiveId), $"objective {row.ObjectiveId}"),
                row.ObjectiveId));
        }

        return coverage;
    }

    private static void CheckOwnRequirements(CourseFolder folder, CourseRules rules, List<NamedChecklist> checklists)
    {
        foreach (var asked in rules.Asked)
        {
            var (checklistId, subject) = asked.Requirement switch
            {
                Requirement.PassedPractical practical => (practical.ChecklistId, practical.Subject),
                Requirement.Practised practised => (practised.ChecklistId, Subject.Model),
                _ => ("", Subject.Model),
            };
            if (checklists.Find(checklist => checklist.Id == checklistId) is not { } own || own.Subjects.Contains(subject)) continue;
            folder.Problems.Add(new(
                CourseProblems.SubjectNotOffered,
                new(folder.PathOf("course.yaml"), asked.Line, asked.Part),
                checklistId,
                subject == Subject.Live ? "live" : "model"));
        }
    }
}
