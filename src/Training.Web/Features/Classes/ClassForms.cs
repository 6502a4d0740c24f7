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

    /// <summary>Seats, as typed: 1 to 200.</summary>
    public string? Seats { get; set; }
}

/// <summary>The form of somebody who gets a seat.</summary>
public sealed class AttendanceForm
{
    /// <summary>Whose badge number it is.</summary>
    public Guid? EmployerId { get; set; }

    /// <summary>Badge number.</summary>
    public string? Badge { get; set; }
}

/// <summary>The form of an instructor who teaches or scores.</summary>
public sealed class InstructorForm
{
    /// <summary>Who.</summary>
    public Guid? InstructorId { get; set; }
}
