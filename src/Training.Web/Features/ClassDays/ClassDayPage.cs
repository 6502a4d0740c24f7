using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Features.Seats;

namespace Training.Web.Features.ClassDays;

/// <summary>What the page of one class day is given.</summary>
/// <param name="Day">Which.</param>
/// <param name="IsToday">It is held today, on its site's calendar.</param>
/// <param name="Course">Of which course, or null where it is not on the shelf.</param>
/// <param name="HasCome">The day has come at its site: who came can be marked.</param>
/// <param name="Details">When, where, what to bring.</param>
/// <param name="Candidates">In the order of their names.</param>
public sealed record ClassDayPage(
    ClassDay Day, bool IsToday, Course? Course, bool HasCome, SeatDay Details, IReadOnlyList<ClassCandidate> Candidates)
{
    /// <summary>The form of somebody who came without a seat, as typed.</summary>
    public ArrivalForm Arrival { get; init; } = new() { Id = Guid.CreateVersion7() };

    /// <summary>Whose mark could not be kept; null where nothing was refused.</summary>
    public Guid? RefusedPersonId { get; init; }

    /// <summary>How many have something to score today.</summary>
    public int Waiting => Candidates.Count(candidate => candidate.Next is NextAct.Score or NextAct.GoOn);
}

/// <summary>Somebody who attends the class.</summary>
/// <param name="PersonId">Who.</param>
/// <param name="Name">By name.</param>
/// <param name="Practicals">Everything that the course scores, in its order.</param>
/// <param name="Next">The one thing to do next.</param>
public sealed record ClassCandidate(Guid PersonId, string Name, IReadOnlyList<PracticalLine> Practicals, NextAct Next)
{
    /// <summary>On hold today: scored on the model, never with a live snake.</summary>
    public bool IsOnHold { get; init; }

    /// <summary>The newest word on whether they came; null where nobody said one.</summary>
    public ClassPresence? Presence { get; init; }

    /// <summary>Sheets that were signed at this class and that the visitor may know of, newest first.</summary>
    public IReadOnlyList<SignedSheet> ScoredHere { get; init; } = [];

    /// <summary>A sheet of this class is about them, whether the visitor may know what it came to or not: they were there.</summary>
    public bool IsScoredHere { get; init; }
}

/// <summary>One checklist on one subject, as a candidate stands with it.</summary>
/// <param name="Practical">Which.</param>
/// <param name="Sheets">All signed sheets of the latest try that the visitor may know of: one a scorer. Empty where there is none.</param>
/// <param name="IsPassed">There is a pass that is new enough, and no other scorer failed that try.</param>
public sealed record PracticalLine(Practical Practical, IReadOnlyList<SignedSheet> Sheets, bool IsPassed)
{
    /// <summary>Names of who scored something whose outcome the visitor may not know yet; null where nothing is closed.</summary>
    public string? ClosedBy { get; init; }

    /// <summary>It is not shown, since it would tell about the model, which is closed.</summary>
    public bool IsBehindModel { get; init; }

    /// <summary>One scorer of the latest try passed it, and another failed it.</summary>
    public bool IsDisputed =>
        Sheets.Any(sheet => sheet.Outcome == PracticalOutcome.Passed) && Sheets.Any(sheet => sheet.Outcome == PracticalOutcome.Failed);
}

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
/// <param name="ClassId">At which class.</param>
/// <param name="Try">Which try at that class.</param>
/// <param name="Scorer">Who scored it, by name.</param>
/// <param name="IsClosed">The visitor may not know the outcome yet.</param>
public sealed record SignedSheet(Practical Practical, DateOnly On, PracticalOutcome Outcome, Guid ClassId, int Try, string Scorer, bool IsClosed);

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

    /// <summary>Another instructor scored this, and the visitor may not know yet what it came to; they may score the same try too.</summary>
    public sealed record ScoredByAnother(Practical Practical) : NextAct;

    /// <summary>Passed everything that the course scores.</summary>
    public sealed record Nothing : NextAct;

    /// <summary>Only a live snake is left, and the candidate is on hold.</summary>
    public sealed record OnHold : NextAct;

    /// <summary>The visitor does not score here, or not on this day.</summary>
    public sealed record NotHere : NextAct;

    /// <summary>The candidate is the visitor, and nobody scores themselves.</summary>
    public sealed record Oneself : NextAct;

    /// <summary>
    /// What comes next where the visitor scores today: the first practical without a pass that is new enough, and that nobody else scores
    /// behind a closed door.
    /// </summary>
    /// <param name="practicals">In the order of the course, so that the model comes before a live snake.</param>
    public static NextAct By(IReadOnlyList<PracticalLine> practicals)
    {
        if (practicals.FirstOrDefault(line => line is { IsPassed: false, ClosedBy: null }) is { } open) return new Score(open.Practical);
        return practicals.FirstOrDefault(line => !line.IsPassed) is { } closed ? new ScoredByAnother(closed.Practical) : new Nothing();
    }
}
