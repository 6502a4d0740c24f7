namespace Training.Web.Features.ClassPlans;

/// <summary>The form of what is to be planned. Numbers and days as typed.</summary>
public sealed class ClassPlanForm
{
    /// <summary>Made when the form was: the same twice is one plan.</summary>
    public Guid Id { get; set; }

    /// <summary>For whose people.</summary>
    public Guid? EmployerId { get; set; }

    /// <summary>Whose renewals.</summary>
    public string? SchemeId { get; set; }

    /// <summary>First day.</summary>
    public string? StartsOn { get; set; }

    /// <summary>Last day.</summary>
    public string? EndsOn { get; set; }

    /// <summary>0 is Sunday.</summary>
    public List<int> Weekdays { get; set; } = [];

    /// <summary>Of every class.</summary>
    public string? Seats { get; set; }

    /// <summary>At all sites together.</summary>
    public string? MostClassesADay { get; set; }

    /// <summary>Of the plan, for one instructor.</summary>
    public string? MostClassesEach { get; set; }

    /// <summary>Longest way, one way, in minutes.</summary>
    public string? MostTravelMinutes { get; set; }

    /// <summary>Days kept free before a certification lapses.</summary>
    public string? MarginDays { get; set; }
}

/// <summary>What is changed about a plan.</summary>
public enum PlanChange
{
    /// <summary>A class goes to another day, site, teacher or scorer.</summary>
    Move,

    /// <summary>A class is taken out.</summary>
    Drop,

    /// <summary>Somebody loses the seat.</summary>
    Leave,

    /// <summary>Somebody gets a seat.</summary>
    Join,
}

/// <summary>The form of a change by hand.</summary>
public sealed class PlanChangeForm
{
    /// <summary>Made when the form was: the same twice is one version.</summary>
    public Guid Id { get; set; }

    /// <summary>The version that is changed.</summary>
    public int Base { get; set; }

    /// <summary>What is done.</summary>
    public PlanChange What { get; set; }

    /// <summary>Which class of the version, 0 first.</summary>
    public int Class { get; set; }

    /// <summary>Where it goes: the day, as typed.</summary>
    public string? Day { get; set; }

    /// <summary>Where it goes.</summary>
    public Guid SiteId { get; set; }

    /// <summary>Who teaches.</summary>
    public Guid TeacherId { get; set; }

    /// <summary>Who scores.</summary>
    public Guid ScorerId { get; set; }

    /// <summary>Who joins or leaves.</summary>
    public Guid WorkerId { get; set; }
}

/// <summary>The form of accepting a version.</summary>
public sealed class PlanAcceptanceForm
{
    /// <summary>Which version was looked at.</summary>
    public int Number { get; set; }
}

/// <summary>The form of days on which an instructor is free, or away.</summary>
public sealed class InstructorDaysForm
{
    /// <summary>Made when the form was: the same twice is one row.</summary>
    public Guid Id { get; set; }

    /// <summary>First day, as typed.</summary>
    public string? StartsOn { get; set; }

    /// <summary>Last day, as typed.</summary>
    public string? EndsOn { get; set; }

    /// <summary>0 is Sunday.</summary>
    public List<int> Weekdays { get; set; } = [];

    /// <summary><c>free</c> or <c>away</c>.</summary>
    public string? What { get; set; }
}

/// <summary>The form of the way between two sites.</summary>
public sealed class SiteTravelForm
{
    /// <summary>Made when the form was: the same twice is one row.</summary>
    public Guid Id { get; set; }

    /// <summary>One site.</summary>
    public Guid? SiteId { get; set; }

    /// <summary>The other.</summary>
    public Guid? OtherSiteId { get; set; }

    /// <summary>As typed.</summary>
    public string? Minutes { get; set; }
}
