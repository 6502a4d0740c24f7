namespace Training.Web.Features.Seats;

/// <summary>The form that gives somebody a seat, or a place in line where every seat is taken.</summary>
public sealed class SeatForm
{
    /// <summary>Made with the form: the same twice is one place.</summary>
    public Guid Id { get; set; }

    /// <summary>Badge number of the person.</summary>
    public string? Badge { get; set; }
}

/// <summary>The form that gives a seat back.</summary>
public sealed class ReturnForm
{
    /// <summary>Made with the form: the same twice is one seat given back.</summary>
    public Guid Id { get; set; }

    /// <summary>Whose seat; not in the form of one's own.</summary>
    public Guid? PersonId { get; set; }

    /// <summary>Why, as typed.</summary>
    public string? Reason { get; set; }
}

/// <summary>The form that takes somebody off the waiting list.</summary>
public sealed class WaitingEndForm
{
    /// <summary>Whom; not in the form of one's own.</summary>
    public Guid? PersonId { get; set; }
}
