namespace Training.Web.Features.ClassDays;

/// <summary>The form that says whether somebody came.</summary>
public sealed class PresenceForm
{
    /// <summary>Made with the form: the same twice is one word.</summary>
    public Guid Id { get; set; }

    /// <summary>Who.</summary>
    public Guid? PersonId { get; set; }

    /// <summary>They did not come.</summary>
    public bool IsAbsent { get; set; }

    /// <summary>What is known of why, as typed.</summary>
    public string? Reason { get; set; }
}

/// <summary>The form of somebody who came without a seat.</summary>
public sealed class ArrivalForm
{
    /// <summary>Made with the form: the same twice is one word that they came.</summary>
    public Guid Id { get; set; }

    /// <summary>Badge number with the employer of the site, as typed.</summary>
    public string? Badge { get; set; }
}
