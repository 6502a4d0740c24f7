namespace Training.Web.Features.Classes;

/// <summary>The form of a new class.</summary>
public sealed class ClassForm
{
    /// <summary>Made when the form was: the same twice is one class.</summary>
    public Guid Id { get; set; }

    /// <summary>Of which course.</summary>
    public string? CourseId { get; set; }

    /// <summary>Where.</summary>
    public Guid? SiteId { get; set; }

    /// <summary>The day, as typed.</summary>
    public string? HeldOn { get; set; }

    /// <summary>The start, as typed: hours and minutes on the clocks of the site.</summary>
    public string? StartsAt { get; set; }

    /// <summary>How many hours it lasts, as typed: a quarter to 24.</summary>
    public string? Hours { get; set; }

    /// <summary>Seats, as typed: 1 to 200.</summary>
    public string? Seats { get; set; }
}

/// <summary>The form that moves a class or changes its seats.</summary>
public sealed class ChangeForm
{
    /// <summary>Made with the form: the same twice is one change.</summary>
    public Guid Id { get; set; }

    /// <summary>The day, as typed.</summary>
    public string? ToOn { get; set; }

    /// <summary>The start, as typed.</summary>
    public string? ToStartsAt { get; set; }

    /// <summary>How many hours it lasts, as typed.</summary>
    public string? ToHours { get; set; }

    /// <summary>Seats, as typed.</summary>
    public string? ToSeats { get; set; }

    /// <summary>Why, as typed.</summary>
    public string? ChangeReason { get; set; }
}

/// <summary>The form that cancels a class.</summary>
public sealed class CancellationForm
{
    /// <summary>Why, as typed.</summary>
    public string? CancelReason { get; set; }
}

/// <summary>The form of what the people of a class are to know before it.</summary>
public sealed class BriefingForm
{
    /// <summary>Made with the form: the same twice is one.</summary>
    public Guid Id { get; set; }

    /// <summary>Where people meet, as typed.</summary>
    public string? MeetingPlace { get; set; }

    /// <summary>Kit that is needed, a line each, as typed.</summary>
    public string? Kit { get; set; }

    /// <summary>What the weather asks, as typed.</summary>
    public string? Weather { get; set; }
}

/// <summary>The form of somebody who gets a seat.</summary>
public sealed class AttendanceForm
{
    /// <summary>Made with the form: where every seat is taken, the same twice is one place in line.</summary>
    public Guid Id { get; set; }

    /// <summary>Whose badge number it is.</summary>
    public Guid? EmployerId { get; set; }

    /// <summary>Badge number.</summary>
    public string? Badge { get; set; }

    /// <summary>They are put in line rather than given a seat.</summary>
    public bool IsWaiting { get; set; }
}

/// <summary>The form of an instructor who teaches or scores.</summary>
public sealed class InstructorForm
{
    /// <summary>Who.</summary>
    public Guid? InstructorId { get; set; }
}
