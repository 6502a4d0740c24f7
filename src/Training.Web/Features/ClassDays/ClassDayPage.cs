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
/// <param name="Model">The latest signed sheet on the model, or null.</param>
/// <param name="Live">The latest signed sheet on a live snake, or null.</param>
/// <param name="Next">The one thing to do next.</param>
public sealed record ClassCandidate(Guid PersonId, string Name, SignedSheet? Model, SignedSheet? Live, NextAct Next);

/// <summary>What a signed sheet came to.</summary>
/// <param name="Subject">On what.</param>
/// <param name="On">When.</param>
/// <param name="Outcome">What it came to.</param>
public sealed record SignedSheet(Subject Subject, DateOnly On, PracticalOutcome Outcome);

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

    /// <summary>Score on this subject.</summary>
    public sealed record Score(Subject On) : NextAct;

    /// <summary>Passed on everything that the checklist is scored on.</summary>
    public sealed record Nothing : NextAct;

    /// <summary>The visitor does not score here, or not on this day.</summary>
    public sealed record NotHere : NextAct;

    /// <summary>The candidate is the visitor, and nobody scores themselves.</summary>
    public sealed record Oneself : NextAct;

    /// <summary>What comes next where the visitor scores today: the model first, then a live snake where the checklist asks for one.</summary>
    /// <param name="subjects">What the checklist is scored on.</param>
    /// <param name="passed">On what there is a pass that is new enough.</param>
    public static NextAct By(IReadOnlyList<Subject> subjects, IReadOnlySet<Subject> passed)
    {
        Subject[] order = [Subject.Model, Subject.Live];
        foreach (var subject in order.Where(subject => subjects.Contains(subject) && !passed.Contains(subject))) return new Score(subject);
        return new Nothing();
    }
}
