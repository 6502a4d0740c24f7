using Training.Courses;
using Training.Records;

namespace Training.Web.Features.Corrections;

/// <summary>What the page of a new correction is given.</summary>
/// <param name="CourseId">For addresses.</param>
/// <param name="CourseTitle">What the paper calls the course.</param>
/// <param name="Form">As chosen so far.</param>
/// <param name="Shown">The question as it was asked.</param>
/// <param name="Present">The question as it reads now where its key can mark those answers, else null.</param>
/// <param name="Preview">What it would change; null until a remedy was chosen.</param>
/// <param name="Names">By person; erased ones are not there.</param>
public sealed record NewCorrectionPage(
    string CourseId, string CourseTitle, CorrectionForm Form, Question Shown, Question? Present, RegradePreview? Preview,
    IReadOnlyDictionary<Guid, string> Names);

/// <summary>What the page of a correction is given.</summary>
/// <param name="CourseTitle">What the paper calls the course.</param>
/// <param name="Correction">The row.</param>
/// <param name="Lead">Name of who made it, or null.</param>
/// <param name="Waiting">Sittings that do not follow it yet.</param>
/// <param name="Changed">Results that it changed.</param>
/// <param name="Cases">Certifications to look at.</param>
/// <param name="Names">By person; erased ones are not there.</param>
/// <param name="Titles">By scheme.</param>
/// <param name="LeadId">Who looks: nobody concludes a case about themselves.</param>
public sealed record CorrectionPage(
    string CourseTitle, KeyCorrectionRecord Correction, string? Lead, int Waiting, IReadOnlyList<RegradedSitting> Changed,
    IReadOnlyList<CorrectionCase> Cases, IReadOnlyDictionary<Guid, string> Names, IReadOnlyDictionary<string, string> Titles, Guid LeadId);

/// <summary>What the list of a course's corrections is given.</summary>
/// <param name="CourseId">For addresses.</param>
/// <param name="CourseTitle">What the paper calls the course.</param>
/// <param name="Corrections">The newest first.</param>
public sealed record CorrectionsPage(string CourseId, string CourseTitle, IReadOnlyList<KeyCorrectionRecord> Corrections);
