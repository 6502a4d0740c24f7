using Training.Certification;

namespace Training.Web.Features.Appeals;

/// <summary>What somebody posts who appeals or complains.</summary>
public sealed class AppealForm
{
    /// <summary>Made with the form: the same twice is one appeal.</summary>
    public Guid Id { get; set; }

    /// <summary>What sort of thing; left out: a complaint.</summary>
    public AppealMatter? Matter { get; set; }

    /// <summary>Which sitting, sheet (by the form's id) or decision; means nothing for a complaint.</summary>
    public Guid? Of { get; set; }

    /// <summary>Why, as typed.</summary>
    public string? Words { get; set; }
}

/// <summary>What a lead posts who decides an appeal.</summary>
public sealed class AppealOutcomeForm
{
    /// <summary>What it comes to.</summary>
    public AppealOutcome? Outcome { get; set; }

    /// <summary>What follows, as chosen; empty for nothing.</summary>
    public AppealRemedy? Remedy { get; set; }

    /// <summary>Why, as typed; the appellant reads it.</summary>
    public string? Reason { get; set; }

    /// <summary>The lead had no part in what it is about.</summary>
    public bool NoPart { get; set; }
}

/// <summary>What a lead posts who looked at what had rested on a result.</summary>
public sealed class LookForm
{
    /// <summary>What they found and did, as typed.</summary>
    public string? Finding { get; set; }
}
