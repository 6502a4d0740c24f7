using Training.Courses;
using Training.Records;

namespace Training.Web.Features.Questions;

/// <summary>What the review of a module's questions posts. A question is named with the version that was on the page: <c>id version</c>.</summary>
public sealed class ReviewForm
{
    /// <summary>Made when the form was: the same twice is one review.</summary>
    public Guid Id { get; set; }

    /// <summary>All that were on the page and waited for a review.</summary>
    public List<string> Shown { get; set; } = [];

    /// <summary>Those that were ticked.</summary>
    public List<string> Ticked { get; set; } = [];

    /// <summary>The button: <c>all</c> accepts what was shown, <c>ticked</c> what was ticked; null where another was pressed.</summary>
    public string? Accept { get; set; }

    /// <summary>The button beside one question that has something to mend; null where another was pressed.</summary>
    public string? Aside { get; set; }

    /// <summary>The button beside one question that lets it rest; null where another was pressed.</summary>
    public string? Rest { get; set; }

    /// <summary>The button beside one question that withdraws it; null where another was pressed.</summary>
    public string? Withdraw { get; set; }

    /// <summary>The reviews that it stands for; a question that reads otherwise by now is left out, since nobody read that.</summary>
    public IReadOnlyList<QuestionReview> Read(Course course, Guid reviewerId, DateTimeOffset now)
    {
        var (named, outcome) = (Aside, Rest, Withdraw, Accept) switch
        {
            ({ } one, _, _, _) => ([one], ReviewOutcome.SetAside),
            (_, { } one, _, _) => ([one], ReviewOutcome.Resting),
            (_, _, { } one, _) => ([one], ReviewOutcome.Withdrawn),
            (_, _, _, "all") => (Shown, ReviewOutcome.Accepted),
            _ => (Ticked, ReviewOutcome.Accepted),
        };
        return
        [
            .. course.Questions.Where(question => named.Contains(NameOf(question))).Select(question => new QuestionReview
            {
                FormId = Id, CourseId = course.Id, QuestionId = question.Id, QuestionVersion = question.Version, Outcome = outcome, ReviewerId = reviewerId,
                ReviewedAt = now,
            }),
        ];
    }

    /// <summary>What the form calls a question.</summary>
    public static string NameOf(Question question) => $"{question.Id} {question.Version}";
}
