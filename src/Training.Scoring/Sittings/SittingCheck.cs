using System.Diagnostics;
using Training.Courses;

namespace Training.Scoring;

/// <summary>Finds everything that makes a submitted sitting something other than an answer to the quiz that was drawn.</summary>
internal static class SittingCheck
{
    public static void Find(Course course, Sitting sitting, ICollection<Problem> problems)
    {
        if (sitting.Draw.CourseHash != course.Hash)
        {
            problems.Add(new(SittingProblems.CourseDiffers, Place.Of("draw"), sitting.Draw.CourseHash, course.Hash));
        }

        if (sitting.Draw.QuizId != course.Quiz.Id)
        {
            problems.Add(new(SittingProblems.QuizDiffers, Place.Of("draw"), sitting.Draw.QuizId, course.Quiz.Id));
        }

        if (sitting.SubmittedAt < sitting.StartedAt) problems.Add(new(SittingProblems.SubmittedBeforeStart, Place.Of("submission")));

        var pool = course.Questions.ToDictionary(question => question.Id, StringComparer.Ordinal);
        FindInDraw(course, sitting.Draw, pool, problems);
        FindInAnswers(sitting, pool, problems);
    }

    private static void FindInDraw(Course course, Draw draw, Dictionary<string, Question> pool, ICollection<Problem> problems)
    {
        foreach (var drawn in draw.Questions)
        {
            var place = Place.Of($"question {drawn.QuestionId}");
            if (!pool.TryGetValue(drawn.QuestionId, out var question))
            {
                problems.Add(new(SittingProblems.DrawnQuestionUnknown, place, drawn.QuestionId));
                continue;
            }

            if (drawn.QuestionVersion != question.Version) problems.Add(new(SittingProblems.QuestionVersionDiffers, place, drawn.QuestionId));
            if (!drawn.OptionIds.Order(StringComparer.Ordinal).SequenceEqual(question.OptionIds.Order(StringComparer.Ordinal)))
            {
                problems.Add(new(SittingProblems.DrawnOptionsDiffer, place, drawn.QuestionId));
            }
        }

        var known = draw.Questions.Where(drawn => pool.ContainsKey(drawn.QuestionId)).Select(drawn => pool[drawn.QuestionId]).ToList();
        foreach (var topic in course.Topics.Where(topic => !FitsBlueprint(course.Quiz, topic, known)))
        {
            problems.Add(new(SittingProblems.DrawOffBlueprint, Place.Of($"topic {topic}"), topic));
        }
    }

    private static bool FitsBlueprint(Quiz quiz, string topic, List<Question> drawn)
    {
        var row = quiz.Blueprint.SingleOrDefault(row => row.Topic == topic) ?? new BlueprintRow(topic, 0, 0, 0);
        var ofTopic = drawn.Where(question => question.Topic == topic).ToList();
        return ofTopic.Count == row.Questions
            && ofTopic.Count(question => question.IsCritical) == row.Critical
            && ofTopic.DistinctBy(question => question.Id, StringComparer.Ordinal).Count() == ofTopic.Count;
    }

    private static void FindInAnswers(Sitting sitting, Dictionary<string, Question> pool, ICollection<Problem> problems)
    {
        var drawn = sitting.Draw.Questions.Select(question => question.QuestionId).ToHashSet(StringComparer.Ordinal);
        var answered = new HashSet<string>(StringComparer.Ordinal);
        foreach (var answer in sitting.Answers)
        {
            var place = Place.Of($"question {answer.QuestionId}");
            if (!drawn.Contains(answer.QuestionId))
            {
                problems.Add(new(SittingProblems.AnswerNotDrawn, place, answer.QuestionId));
                continue;
            }

            if (!answered.Add(answer.QuestionId)) problems.Add(new(SittingProblems.AnswerTwice, place, answer.QuestionId));
            if (pool.TryGetValue(answer.QuestionId, out var question)) FindInAnswer(question, answer, place, problems);
        }
    }

    private static void FindInAnswer(Question question, Answer answer, Place place, ICollection<Problem> problems)
    {
        foreach (var option in answer.OptionIds.Except(question.OptionIds, StringComparer.Ordinal))
        {
            problems.Add(new(SittingProblems.OptionUnknown, place, option));
        }

        foreach (var option in answer.OptionIds.GroupBy(option => option, StringComparer.Ordinal).Where(same => same.Count() > 1))
        {
            problems.Add(new(SittingProblems.OptionTwice, place, option.Key));
        }

        if (!HasShape(question, answer)) problems.Add(new(SittingProblems.AnswerShape, place, question.Id));
    }

    private static bool HasShape(Question question, Answer answer) => question.Key switch
    {
        QuestionKey.One => answer.OptionIds.Count == 1 && answer.Number is null,
        QuestionKey.Several => answer.OptionIds.Count >= 1 && answer.Number is null,
        QuestionKey.Order => answer.OptionIds.Count == question.OptionIds.Count && answer.Number is null,
        QuestionKey.Number => answer.OptionIds.Count == 0 && answer.Number is not null,
        _ => throw new UnreachableException(),
    };
}
