using Training.Courses;

namespace Training.Web.Features.IssueLog;

/// <summary>What came of verifying the whole log.</summary>
/// <param name="Leaves">That were read.</param>
/// <param name="Heads">Signed ones in the records.</param>
/// <param name="UnloggedPapers">Papers that no leaf can be opened for: older than the log, or erased from it.</param>
/// <param name="Problems">Of each kind the first; empty where the log is whole.</param>
public sealed record LogReport(long Leaves, int Heads, int UnloggedPapers, IReadOnlyList<Problem> Problems);
