using Training.Courses;
using Training.Records;
using Training.Scoring;

namespace Training.Web.Features.Scoring;

/// <summary>What the page of one step is given.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Number">The step, from 1.</param>
/// <param name="Step">The step itself.</param>
/// <param name="Words">Of the checklist, in the page's language.</param>
public sealed record StepPage(OpenSheet Sheet, int Number, ChecklistStep Step, ChecklistWords Words)
{
    /// <summary>Why the step is critical, as HTML; null where it is not.</summary>
    public string? Reason => Step.IsCritical ? Words.ReasonHtml[Step.Id] : null;
}

/// <summary>What the sign-off is given: exactly what will be signed.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Form">What the page carries in its fields.</param>
/// <param name="Result">What it comes to as it stands; null where it may not stand.</param>
public sealed record SignOffPage(OpenSheet Sheet, SignOffForm Form, ScoresheetResult? Result);

/// <summary>What the page of a signed sheet is given.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Signed">As it was signed first.</param>
/// <param name="Result">What it came to; null where it does not count until somebody looked.</param>
/// <param name="SeparationReason">Why the scorer may count although they taught, or null.</param>
/// <param name="Word">What the candidate said to it, or null.</param>
/// <param name="WordForm">As typed.</param>
/// <param name="OtherContents">How many other contents came under the same id and wait for a lead.</param>
public sealed record SignedPage(
    OpenSheet Sheet, Scoresheet Signed, ScoresheetResult? Result, string? SeparationReason, CandidateWordRecord? Word,
    CandidateWordForm WordForm, int OtherContents);

/// <summary>What the page about a disputed sheet is given.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="IsOtherContent">True: the same sheet came with other content; false: another sheet of the same try was signed before.</param>
public sealed record DisputedPage(OpenSheet Sheet, bool IsOtherContent);

/// <summary>Conditions and kit as lines of a table, for the sign-off and for what was sent.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Scoresheet">What is shown of it.</param>
/// <param name="SeparationReason">Or null.</param>
public sealed record ParticularsPart(OpenSheet Sheet, Scoresheet Scoresheet, string? SeparationReason);
