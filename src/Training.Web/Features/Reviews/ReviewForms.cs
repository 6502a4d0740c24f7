using Training.Certification;
using Training.Records;

namespace Training.Web.Features.Reviews;

/// <summary>What a lead posts who concludes a review.</summary>
public sealed class ConclusionForm
{
    /// <summary>What was concluded, as typed; 1 to 2,000 characters.</summary>
    public string? Words { get; set; }
}

/// <summary>What a lead posts about a site: something is new there.</summary>
public sealed class SiteEventForm
{
    /// <summary>Made with the form: the same twice is one event.</summary>
    public Guid Id { get; set; }

    /// <summary>A new kind of tool, or a new species.</summary>
    public ReviewCause? Cause { get; set; }

    /// <summary>What is new, as typed; 1 to 2,000 characters.</summary>
    public string? Words { get; set; }

    /// <summary>Handlers who are trained on it already: nothing is opened for them.</summary>
    public List<Guid> Trained { get; set; } = [];
}

/// <summary>What a lead posts about a person.</summary>
public sealed class PersonEventForm
{
    /// <summary>Made with the form: the same twice is one event.</summary>
    public Guid Id { get; set; }

    /// <summary>Another site, changed guidance, or something else.</summary>
    public ReviewCause? Cause { get; set; }

    /// <summary>What happened, as typed; 1 to 2,000 characters.</summary>
    public string? Words { get; set; }

    /// <summary>Handling waits for the review; only for something else than the two named.</summary>
    public bool Hold { get; set; }
}

/// <summary>What somebody posts about themselves.</summary>
public sealed class CapabilityForm
{
    /// <summary>Made with the form: the same twice is one report.</summary>
    public Guid Id { get; set; }

    /// <summary>What sort of thing changed.</summary>
    public CapabilityMatter? Matter { get; set; }

    /// <summary>What they want to say; up to 2,000 characters, may be empty.</summary>
    public string? Words { get; set; }
}
