using Training.Courses;
using Training.Scoring;

namespace Training.Web.Features.ClassDays;

/// <summary>What the page of one class day is given.</summary>
/// <param name="Day">Which.</param>
/// <param name="IsToday">It is held today, on its site's calendar.</param>
/// <param name="Course">Of which course, or null where it is not on the shelf.</param>
/// <param name="Candidates">In the order of their names.</param>
public sealed record ClassDayPage(ClassDay Day, bool IsToday, Course? Course, IReadOnlyList<ClassCandidate> Candidates)
{
    /// <summary>How many have something to score today.</summary>
    public int Waiting => Candidates.Count(candidate => candidate.Next is NextAct.Score or NextAct.GoOn);
}

/// <summary>Somebody who attends the class.</summary>
/// <param name="PersonId">Who.</param>
/// <param name="Name">By name.</param>
/// <param name="Practicals">Everything that the course scores, in its order.</param>
/// <param name="Next">The one thing to do next.</param>
public sealed record ClassCandidate(Guid PersonId, string Name, IReadOnlyList<PracticalLine> Practicals, NextAct Next);

/// <summary>One checklist on one subject, as a candidate stands with it.</summary>
/// <param name="Practical">Which.</param>
/// <param name="Sheet">The latest signed sheet, or null.</param>
/// <param name="IsPassed">There is a pass that is new enough.</param>
public sealed record PracticalLine(Practical Practical, SignedSheet? Sheet, bool IsPassed);

/// <summary>A checklist on one of its subjects.</summary>
/// <param name="ChecklistId">Which checklist.</param>
/// <param name="On">The model, or a live snake.</param>
public sealed record Practical(string ChecklistId, Subject On)
{
    private static readonly Subject[] ModelFirst = [Subject.Model, Subject.Live];

    /// <summary>Everything that a course scores: its checklists in their order, each on the model before a live snake.</summary>
    public static IReadOnlyList<Practical> AllOf(Course course) =>
    [
        .. from checklist in course.Checklists
           from subject in ModelFirst
           where checklist.Subjects.Contains(subject)
           select new Practical(checklist.Id, subject),
    ];
}

/// <summary>What a signed sheet came to.</summary>
/// <param name="Practical">Of which checklist, on what.</param>
/// <param name="On">When.</param>
/// <param name="Outcome">What it came to.</param>
public sealed record SignedSheet(Practical Practical, DateOnly On, PracticalOutcome Outcome);

/// <summary>What an instructor does next for a candidate. A closed family.</summary>
public abstract record NextAct
{
    private NextAct()
    {
    }

    /// <summary>Go on with a sheet that was started.</summary>
    /// <param name="SheetId">Which.</param>
    /// <param name="Step">The first step without a mark, from 1; null where only the signature is missing.</param>
    public sealed record GoOn(Guid SheetId, int? Step) : NextAct;

    /// <summary>Score this.</summary>
    public sealed record Score(Practical Practical) : NextAct;

    /// <summary>Passed everything that the course scores.</summary>
    public sealed record Nothing : NextAct;

    /// <summary>The visitor does not score here, or not on this day.</summary>
    public sealed record NotHere : NextAct;

    /// <summary>The candidate is the visitor, and nobody scores themselves.</summary>
    public sealed record Oneself : NextAct;

    /// <summary>What comes next where the visitor scores today: the first practical without a pass that is new enough.</summary>
    /// <param name="practicals">In the order of the course, so that the model comes before a live snake.</param>
    public static NextAct By(IEnumerable<PracticalLine> practicals) =>
        practicals.FirstOrDefault(line => !line.IsPassed) is { } open ? new Score(open.Practical) : new Nothing();
}
