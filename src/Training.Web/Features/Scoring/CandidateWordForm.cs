using Training.Records;

namespace Training.Web.Features.Scoring;

/// <summary>What a candidate says to a signed sheet, on the instructor's device.</summary>
public sealed class CandidateWordForm
{
    /// <summary>Made with the form: the same twice is one word.</summary>
    public Guid Id { get; set; }

    /// <summary>What they say.</summary>
    public CandidateWord? Word { get; set; }

    /// <summary>The name that they type to sign.</summary>
    public string? CandidateName { get; set; }

    /// <summary>Why they object, or, written by the instructor, why they did not sign.</summary>
    public string? Because { get; set; }
}
