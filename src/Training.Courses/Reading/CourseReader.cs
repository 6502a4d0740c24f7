namespace Training.Courses;

/// <summary>Reads course folders (docs/course-format.md): every finding of every file at once; a course with one is left out, the others are not.</summary>
public static class CourseReader
{
    /// <summary>Reads and checks everything.</summary>
    /// <param name="files">The texts.</param>
    /// <param name="address">Where the site keeps modules; null: <see cref="ModuleAddresses.Beside"/>.</param>
    public static CourseReading Read(CourseFiles files, ModuleAddress? address = null)
    {
        var problems = new List<Problem>(files.Problems);
        var shared = SharedSources.Read(files, problems);
        var library = SpeciesFiles.Read(files, shared, address ?? ModuleAddresses.Beside, problems);
        var folders = new SortedDictionary<string, ReadFolder?>(StringComparer.Ordinal);
        foreach (var path in files.Paths.Where(path => !path.Contains('/', StringComparison.Ordinal)))
        {
            if (path is not ("facts.yaml" or "guidance.yaml" or "README.md") && !SpeciesFiles.IsOurs(path)) problems.Add(new(CourseProblems.FileUnexpected, new(path)));
        }

        foreach (var id in files.Paths.Where(path => path.Contains('/', StringComparison.Ordinal)).Select(path => path[..path.IndexOf('/', StringComparison.Ordinal)]).Distinct(StringComparer.Ordinal))
        {
            if (LanguageTags.Find(id) is null) folders[id] = CourseFolderReader.Read(files, id, shared, address ?? ModuleAddresses.Beside, problems);
        }

        CheckLanguageFolders(files, problems);
        CheckSubjects(shared, problems);
        CheckAcross(folders, problems);
        foreach (var (id, folder) in folders)
        {
            if (folder is not null) HouseRules.Check(id, folder, library, problems);
        }

        var good = folders.Where(folder => !problems.Exists(problem => problem.Place.File?.StartsWith(folder.Key + "/", StringComparison.Ordinal) == true))
            .Select(folder => folder.Value).OfType<ReadFolder>().ToList();
        return new(
            [.. good.Select(folder => folder.Course).OfType<Course>()],
            [.. good.Select(folder => folder.Snapshot).OfType<CourseSnapshot>()],
            [.. problems.OrderBy(problem => problem.Place.File, StringComparer.Ordinal).ThenBy(problem => problem.Place.Line ?? 0)],
            shared.Guidance,
            [.. shared.Facts.Values.OrderBy(fact => fact.Id, StringComparer.Ordinal)],
            [.. folders.Values.OfType<ReadFolder>().SelectMany(folder => folder.Coverage)],
            library,
            [.. folders.Values.OfType<ReadFolder>().SelectMany(folder => folder.GuidanceUses).Distinct().OrderBy(use => use.Place.File, StringComparer.Ordinal).ThenBy(use => use.Place.Line)],
            [.. folders.Values.OfType<ReadFolder>().Select(folder => folder.Draft)]);
    }

    private static void CheckLanguageFolders(CourseFiles files, List<Problem> problems)
    {
        foreach (var path in files.Paths.Where(path => LanguageTags.All.Any(language => path.StartsWith(language.Tag() + "/", StringComparison.Ordinal))))
        {
            if (SpeciesFiles.IsOurs(path)) continue;
            if (!path.EndsWith("/guidance.md", StringComparison.Ordinal) || path.Count(c => c == '/') != 1) problems.Add(new(CourseProblems.FileUnexpected, new(path)));
        }
    }

    // Not where words are read: snapshots of before keep none for subjects.
    private static void CheckSubjects(SharedSources shared, List<Problem> problems)
    {
        foreach (var language in LanguageTags.All)
        {
            foreach (var subject in shared.Guidance.Entries.Select(entry => entry.Subject).Distinct(StringComparer.Ordinal).Where(subject => !shared.Words[language].ContainsKey(subject)))
            {
                problems.Add(new(CourseProblems.GuidanceWordsMissing, new($"{language.Tag()}/guidance.md"), subject, language.Tag()));
            }
        }
    }

    /// <summary>What one folder alone cannot know: ids that two courses use, and quizzes, checklists and schemes of other courses.</summary>
    private static void CheckAcross(SortedDictionary<string, ReadFolder?> folders, List<Problem> problems)
    {
        var quizzes = new Dictionary<string, string>(StringComparer.Ordinal);
        var checklists = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (id, folder) in folders)
        {
            if (folder is null) continue;
            Claim(quizzes, folder.Rules.Quiz.Id, new($"{id}/course.yaml", folder.Rules.QuizLine, "quiz"), problems);
            foreach (var checklist in folder.Checklists)
            {
                Claim(checklists, checklist.Id, new($"{id}/checklists.yaml", checklist.Line, $"checklist {checklist.Id}"), problems);
            }
        }

        foreach (var (id, folder) in folders)
        {
            if (folder is null) continue;
            foreach (var asked in folder.Rules.Asked)
            {
                var (code, name, isThere) = asked.Requirement switch
                {
                    Requirement.PassedQuiz quiz => (CourseProblems.QuizUnknown, quiz.QuizId, quizzes.ContainsKey(quiz.QuizId)),
                    Requirement.PassedPractical practical => (CourseProblems.ChecklistUnknown, practical.ChecklistId, checklists.ContainsKey(practical.ChecklistId)),
                    Requirement.Practised practised => (CourseProblems.ChecklistUnknown, practised.ChecklistId, checklists.ContainsKey(practised.ChecklistId)),
                    Requirement.Holds holds => (CourseProblems.SchemeUnknown, holds.SchemeId, folders.ContainsKey(holds.SchemeId)),
                    _ => throw new System.Diagnostics.UnreachableException(),
                };
                if (!isThere && name.Length > 0) problems.Add(new(code, new($"{id}/course.yaml", asked.Line, asked.Part), name));
            }
        }
    }

    private static void Claim(Dictionary<string, string> owners, string id, Place place, List<Problem> problems)
    {
        if (id.Length > 0 && !owners.TryAdd(id, place.File ?? "")) problems.Add(new(CourseProblems.IdElsewhere, place, id, owners[id]));
    }
}
