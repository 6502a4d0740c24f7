namespace Training.Certification;

/// <summary>How far an appeal has come, in calendar days of the provider's zone, and when its next step is due.</summary>
/// <param name="ReceivedOn">The day it was received.</param>
/// <param name="TakenUpOn">The day a lead took it up, or null.</param>
/// <param name="DecidedOn">The day it was decided, or null.</param>
/// <remarks>Rule: docs/rules.md, "Appeals".</remarks>
public sealed record AppealCourse(DateOnly ReceivedOn, DateOnly? TakenUpOn, DateOnly? DecidedOn)
{
    /// <summary>Days from receipt within which somebody takes it up.</summary>
    public const int TakeUpDays = 7;

    /// <summary>Days from receipt within which it is decided.</summary>
    public const int DecideDays = 30;

    /// <summary>Last day for taking it up, included.</summary>
    public DateOnly TakeUpBy => ReceivedOn.AddDays(TakeUpDays);

    /// <summary>Last day for deciding it, included. A late start moves it by nothing.</summary>
    public DateOnly DecideBy => ReceivedOn.AddDays(DecideDays);

    /// <summary>Last day for what comes next; null where it is decided.</summary>
    public DateOnly? NextBy => DecidedOn is not null ? null : TakenUpOn is null ? TakeUpBy : DecideBy;

    /// <summary>Whether what comes next should have been done before that day.</summary>
    public bool IsOverdue(DateOnly today) => NextBy < today;
}
