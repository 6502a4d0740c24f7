namespace Training.Web.Features.InstructorFiles;

/// <summary>What a lead writes down about an instructor's competence.</summary>
public sealed class CompetenceForm
{
    /// <summary>Made with the form: the same twice is one entry.</summary>
    public Guid Id { get; set; }

    /// <summary>For which course.</summary>
    public string? CourseId { get; set; }

    /// <summary>What for, ticked: <c>Teach-Model</c>, <c>Score-Live</c> and so on.</summary>
    public List<string> For { get; set; } = [];

    /// <summary>First day, as typed.</summary>
    public string? StartsOn { get; set; }

    /// <summary>Last day, as typed.</summary>
    public string? EndsOn { get; set; }

    /// <summary>What shows it, as typed.</summary>
    public string? Evidence { get; set; }
}

/// <summary>What stands between an instructor and an employer's people, or one of them.</summary>
public sealed class ConflictForm
{
    /// <summary>Made with the form: the same twice is one.</summary>
    public Guid Id { get; set; }

    /// <summary>The employer.</summary>
    public Guid? EmployerId { get; set; }

    /// <summary>The badge number of one of its people, as typed; empty for all of them.</summary>
    public string? Badge { get; set; }

    /// <summary>What it is, as typed.</summary>
    public string? Words { get; set; }

    /// <summary>First day, as typed.</summary>
    public string? ConflictStartsOn { get; set; }
}

/// <summary>The end of an entry.</summary>
public sealed class EntryEndForm
{
    /// <summary>Which competence or conflict.</summary>
    public Guid EntryId { get; set; }

    /// <summary>Why, as typed.</summary>
    public string? EndReason { get; set; }
}
