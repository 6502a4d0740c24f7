using Training.Records;

namespace Training.Web.Features.Corrections;

/// <summary>A question that turned out wrong, and how it is to be graded: asked for a preview, and posted to be applied.</summary>
public sealed class CorrectionForm
{
    /// <summary>Made when the form was: the same twice is one correction.</summary>
    public Guid Id { get; set; }

    /// <summary>Which question.</summary>
    public string? Question { get; set; }

    /// <summary>The text that was wrong.</summary>
    public string? Version { get; set; }

    /// <summary>What is to be done; null until it was chosen.</summary>
    public CorrectionRemedy? Remedy { get; set; }

    /// <summary>Why, for everybody whose result changes; 1 to 2,000 characters.</summary>
    public string? Reason { get; set; }
}

/// <summary>What a lead concludes about a certification that rests on a result which no longer passes.</summary>
public sealed class ConclusionForm
{
    /// <summary>What follows, and why; 1 to 2,000 characters.</summary>
    public string? Conclusion { get; set; }
}
