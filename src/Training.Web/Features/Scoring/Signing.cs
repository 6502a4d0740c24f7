using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Features.Scoresheets;

namespace Training.Web.Features.Scoring;

/// <summary>Keeps a signed sheet, and the reason that was written at its start, together; and reads both back.</summary>
internal static class Signing
{
    public static async Task SignAsync(
        this RecordsContext records, OpenSheet sheet, Scoresheet scoresheet, DateTimeOffset now, ICollection<Problem> problems,
        CancellationToken cancellation)
    {
        await using var both = await records.Database.BeginTransactionAsync(cancellation);
        await records.SubmitAsync(sheet.Course, scoresheet, sheet.Zone, now, problems, cancellation);
        if (problems.Count == 0 && sheet.Started.SeparationReason is { } reason)
        {
            var scoredOn = DecisionDay.On(scoresheet.SignedAt, TimeZoneInfo.FindSystemTimeZoneById(sheet.Zone));
            // A lead may have written another reason meanwhile; the first stays, and the sheet is kept in any case.
            await records.KeepSeparationReasonAsync(scoresheet.Id, scoresheet.InstructorId, reason, scoredOn, now, cancellation);
        }

        await both.CommitAsync(cancellation);
    }

    public static async Task<SignedPage> GetSignedPageAsync(
        this RecordsContext records, OpenSheet sheet, CandidateWordForm form, CancellationToken cancellation)
    {
        var copies = await records.CopiesOfScoresheetAsync(sheet.Started.Id, cancellation);
        var (first, id) = (copies[0], sheet.Started.Id); // one at least: it is signed
        var reason = await (from signed in records.Scoresheets
                            where signed.FormId == id && signed.Copy == 1
                            join written in records.SeparationReasons on signed.Id equals written.ScoresheetId
                            select written.Reason).SingleOrDefaultAsync(cancellation);
        var word = await (from signed in records.Scoresheets
                          where signed.FormId == id && signed.Copy == 1
                          join said in records.CandidateWords on signed.Id equals said.ScoresheetId
                          select said).AsNoTracking().SingleOrDefaultAsync(cancellation);
        return new(sheet, first.Sheet, first.Results is [.., var last] ? last.Result : null, reason, word, form, copies.Count - 1);
    }
}
