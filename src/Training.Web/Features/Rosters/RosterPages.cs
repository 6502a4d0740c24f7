using Training.Courses;
using Training.Records;

namespace Training.Web.Features.Rosters;

/// <summary>The form of a roster file.</summary>
public sealed class RosterForm
{
    /// <summary>Made when the form was: the same file twice is one upload.</summary>
    public Guid Id { get; set; }

    /// <summary>The file, or null where none was chosen.</summary>
    public IFormFile? File { get; set; }
}

/// <summary>The form that applies a roster.</summary>
public sealed class RosterApplicationForm
{
    /// <summary>Of the difference that was on the page.</summary>
    public string? Fingerprint { get; set; }

    /// <summary>Whether the employment of who is missing ends.</summary>
    public bool IsWhole { get; set; }
}

/// <summary>What the page with the form is given.</summary>
/// <param name="EmployerId">Whose roster.</param>
/// <param name="EmployerName">Its name.</param>
/// <param name="PeopleCount">How many people it has.</param>
/// <param name="Sites">Its sites, by name.</param>
/// <param name="FormId">Of the form.</param>
/// <param name="Uploads">The newest files that it sent.</param>
public sealed record RosterPage(
    Guid EmployerId, string EmployerName, int PeopleCount, IReadOnlyList<Records.Site> Sites, Guid FormId, IReadOnlyList<RosterUploadLine> Uploads);

/// <summary>One file that was sent.</summary>
public sealed record RosterUploadLine(Guid Id, string FileName, DateTimeOffset SentAt, DateTimeOffset? AppliedAt);

/// <summary>What the page of a file that is not applied is given.</summary>
/// <param name="EmployerId">Whose roster.</param>
/// <param name="EmployerName">Its name.</param>
/// <param name="UploadId">Of the file.</param>
/// <param name="FileName">Its name.</param>
/// <param name="Difference">What it would change; null while something is to be mended.</param>
/// <param name="Problems">All that is to be mended.</param>
/// <param name="IgnoredColumns">Columns that mean nothing to us.</param>
/// <param name="IsWhole">Whether the box for the whole roster is ticked.</param>
/// <param name="IsAnother">Whether another difference was on the page when it was to be applied.</param>
public sealed record RosterDifferencePage(
    Guid EmployerId, string EmployerName, Guid UploadId, string FileName, RosterDifference? Difference, IReadOnlyList<Problem> Problems,
    IReadOnlyList<string> IgnoredColumns, bool IsWhole, bool IsAnother)
{
    /// <summary>Most lines of one list of the page.</summary>
    public const int MostLines = 200;

    /// <summary>Lines with something to mend; 0 where the file as a whole is meant.</summary>
    public int BadLines => Problems.Select(problem => problem.Place.Line).OfType<int>().Distinct().Count();
}

/// <summary>What the page of a file that was applied is given.</summary>
/// <param name="EmployerId">Whose roster.</param>
/// <param name="EmployerName">Its name.</param>
/// <param name="FileName">Of the file.</param>
/// <param name="AppliedAt">When, in the visitor's zone.</param>
/// <param name="AppliedBy">Who; null where their name was erased.</param>
/// <param name="NewCount">People who were new.</param>
/// <param name="ReturningCount">Who came back.</param>
/// <param name="ChangedCount">Who changed.</param>
/// <param name="LeavingCount">Who left.</param>
public sealed record RosterAppliedPage(
    Guid EmployerId, string EmployerName, string FileName, DateTimeOffset AppliedAt, string? AppliedBy, int NewCount, int ReturningCount,
    int ChangedCount, int LeavingCount);
