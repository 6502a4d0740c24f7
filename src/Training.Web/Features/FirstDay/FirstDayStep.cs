namespace Training.Web.Features.FirstDay;

/// <summary>What a new provider does on its first day, in this order. Each can be left and taken up again; what is done is read from the records.</summary>
public enum FirstDayTask
{
    /// <summary>The public address is confirmed.</summary>
    Address,

    /// <summary>Name, postal address, zone and region are kept.</summary>
    Provider,

    /// <summary>There is an employer with a site, and it is written down whom to call from there.</summary>
    Employer,

    /// <summary>The courses to use are chosen, and the quiz of one of them can be drawn from accepted questions.</summary>
    Courses,

    /// <summary>Somebody works for an employer.</summary>
    Roster,

    /// <summary>A class day with an instructor who teaches.</summary>
    ClassDay,

    /// <summary>A certificate was issued.</summary>
    Certificate,
}

/// <summary>One task, whether it is done, and where to go on with it.</summary>
/// <param name="Task">Which.</param>
/// <param name="IsDone">Whether the records say so.</param>
/// <param name="Path">Address below the language: the very page where the next thing is to be done.</param>
public sealed record FirstDayStep(FirstDayTask Task, bool IsDone, string Path);
