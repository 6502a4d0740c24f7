namespace Training.Courses;

/// <summary>What is asked was taught: every objective stands in a module, and a question sends back to one that teaches its objective.</summary>
internal static class TeachingRules
{
    public static void Check(string id, ReadFolder folder, ICollection<Problem> problems)
    {
        var rules = folder.Rules;
        foreach (var module in rules.Modules.Where(module => module.Objectives.Count == 0))
        {
            problems.Add(new(CourseProblems.ModuleWithoutObjective, new($"{id}/course.yaml", module.Line, $"module {module.Id}")));
        }

        foreach (var row in folder.Coverage.Where(row => row.Modules.Count == 0))
        {
            problems.Add(new(
                CourseProblems.ObjectiveUntaught, new($"{id}/course.yaml", rules.LineOf("objective", row.ObjectiveId), $"objective {row.ObjectiveId}"), row.ObjectiveId));
        }

        foreach (var question in folder.Questions)
        {
            if (rules.Modules.FirstOrDefault(module => module.Id == question.Passage.ModuleId) is not { Objectives.Count: > 0 } module) continue;
            if (module.Objectives.Contains(question.Objective, StringComparer.Ordinal) || question.Objective.Length == 0) continue;
            problems.Add(new(
                CourseProblems.PassageOtherObjective, new($"{id}/questions.yaml", question.Line, $"question {question.Id}"), module.Id, question.Objective));
        }
    }
}
