using System.Globalization;
using Training.Courses;

namespace Training.Scoring;

/// <summary>Finds what makes a sitting impossible for a course. Rule: docs/rules.md, "Grading a sitting".</summary>
internal sealed class SittingCheck(Course course, Sitting sitting, ICollection<Problem> problems)
{
    private readonly Dictionary<string, Question> _pool = course.Questions.ToDictionary(question => question.Id, StringComparer.Ordinal);

    public void Run()
    {
        if (sitting.SubmittedAt < sitting.StartedAt) Report(SittingProblems.SubmittedBeforeStart, new Place(Part: nameof(sitting.SubmittedAt)));

        // Against another snapshot or quiz every question would be a finding, and none of them would help.
        if (!IsOfThisCourse()) return;
        foreach (var drawn in sitting.Draw.Questions) CheckDrawn(drawn);
        foreach (var id in AnswerCheck.Repeated(sitting.Draw.Questions.Select(drawn => drawn.QuestionId))) ReportQuestion(SittingProblems.QuestionDrawnTwice, id);
        CheckBlueprint();
        foreach (var id in AnswerCheck.Repeated(sitting.Answers.Select(answer => answer.QuestionId))) ReportQuestion(SittingProblems.AnsweredTwice, id);
        foreach (var answer in sitting.Answers) CheckAnswer(answer);
    }

    private bool IsOfThisCourse()
    {
        var draw = sitting.Draw;
        if (draw.CourseHash != course.Hash) Report(SittingProblems.CourseMismatch, new Place(), draw.CourseHash, course.Hash);
        if (draw.QuizId != course.Quiz.Id) Report(SittingProblems.QuizMismatch, new Place(), draw.QuizId, course.Quiz.Id);
        return draw.CourseHash == course.Hash && draw.QuizId == course.Quiz.Id;
    }

    private void CheckDrawn(DrawnQuestion drawn)
    {
        if (!_pool.TryGetValue(drawn.QuestionId, out var question))
        {
            ReportQuestion(SittingProblems.QuestionUnknown, drawn.QuestionId);
            return;
        }

        if (drawn.QuestionVersion != question.Version)
        {
            ReportQuestion(SittingProblems.QuestionVersionMismatch, question.Id, drawn.QuestionVersion, question.Version);
        }

        var matchIds = (question.Key as QuestionKey.Match)?.MatchIds ?? [];
        if (!AreSame(drawn.OptionsOf(question), question.OptionIds) || !AreSame(drawn.MatchesOf(question), matchIds))
        {
            ReportQuestion(SittingProblems.OptionsMismatch, question.Id);
        }
    }

    private static bool AreSame(IEnumerable<string> shown, IEnumerable<string> ids) =>
        shown.Order(StringComparer.Ordinal).SequenceEqual(ids.Order(StringComparer.Ordinal), StringComparer.Ordinal);

    private void CheckBlueprint()
    {
        var drawn = sitting.Draw.Questions.Select(shown => _pool.GetValueOrDefault(shown.QuestionId)).OfType<Question>().ToList();
        foreach (var row in course.Quiz.Blueprint)
        {
            var ofTopic = drawn.Where(question => question.Topic == row.Topic).ToList();
            CheckCount(SittingProblems.TopicCountMismatch, row.Topic, ofTopic.Count, row.Questions);
            CheckCount(SittingProblems.CriticalCountMismatch, row.Topic, ofTopic.Count(question => question.IsCritical), row.Critical);
        }

        // A topic without a row draws nothing.
        var unasked = drawn.Select(question => question.Topic).Except(course.Quiz.Blueprint.Select(row => row.Topic), StringComparer.Ordinal);
        foreach (var topic in unasked)
        {
            CheckCount(SittingProblems.TopicCountMismatch, topic, drawn.Count(question => question.Topic == topic), asked: 0);
        }
    }

    private void CheckCount(string code, string topic, int drawn, int asked)
    {
        if (drawn == asked) return;
        Report(code, Place.Of($"topic {topic}"), topic, drawn.ToString(CultureInfo.InvariantCulture), asked.ToString(CultureInfo.InvariantCulture));
    }

    private void CheckAnswer(Answer answer)
    {
        if (answer.SavedAt < sitting.StartedAt || answer.SavedAt > sitting.SubmittedAt)
        {
            ReportQuestion(SittingProblems.AnswerOutsideSitting, answer.QuestionId);
        }

        if (sitting.Draw.Questions.All(drawn => drawn.QuestionId != answer.QuestionId))
        {
            ReportQuestion(SittingProblems.AnswerNotDrawn, answer.QuestionId);
            return;
        }

        // A drawn question that the pool lacks has been reported; nothing can be said about its answer.
        if (!_pool.TryGetValue(answer.QuestionId, out var question)) return;
        AnswerCheck.Run(question, answer, problems);
    }

    private void ReportQuestion(string code, string questionId, params string[] more) =>
        Report(code, Place.Of($"question {questionId}"), [questionId, .. more]);

    private void Report(string code, Place place, params string[] arguments) => problems.Add(new(code, place, arguments));
}
