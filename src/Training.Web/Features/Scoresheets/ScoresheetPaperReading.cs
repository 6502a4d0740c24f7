using System.Diagnostics;
using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Documents.Scoresheets;
using Training.Records;
using Training.Scoring;
using Training.Web.Features.Shared;
using Training.Web.Features.SignInSheets;
using Training.Web.Shelf;

namespace Training.Web.Features.Scoresheets;

/// <summary>Reads signed scoresheets as they are printed.</summary>
public sealed class ScoresheetPaperReading(RecordsContext records, CoursesByHash courses, PrintedPapers papers)
{
    /// <summary>The paper of a sheet; null where none was signed under that id, or it does not count until somebody looked.</summary>
    /// <param name="sheetId">Id that the form made.</param>
    /// <param name="instructorId">Who must have scored it; null: anybody.</param>
    /// <param name="language">Of the paper.</param>
    /// <param name="cancellation">Ends the wait.</param>
    /// <exception cref="InvalidOperationException">The checklist that it was scored with is not in the records.</exception>
    public async Task<ScoresheetPage?> FindAsync(Guid sheetId, Guid? instructorId, Language language, CancellationToken cancellation)
    {
        if (await records.FindScoresheetAsync(sheetId, cancellation) is not { Copy: 1, Results: [.., var last] } stored) return null;
        var (sheet, there) = (stored.Sheet, TimeZoneInfo.FindSystemTimeZoneById(stored.Zone));
        if (instructorId is { } own && sheet.InstructorId != own) return null;
        var beside = await (from row in records.Scoresheets
                            where row.FormId == sheetId && row.Copy == 1
                            join day in records.Classes on row.ClassId equals day.Id
                            join site in records.Sites on day.SiteId equals site.Id
                            join employer in records.Employers on site.EmployerId equals employer.Id
                            select new
                            {
                                row.ContentHash, day.CourseId, Site = site.Name, Employer = employer.Name,
                                Reason = records.SeparationReasons.Where(reason => reason.ScoresheetId == row.Id).Select(reason => reason.Reason).FirstOrDefault(),
                                Word = records.CandidateWords.FirstOrDefault(word => word.ScoresheetId == row.Id),
                            }).AsNoTracking().SingleAsync(cancellation);
        var checklist = (await courses.FindAsync(records, beside.CourseId, sheet.CourseHash, cancellation))?.Checklists.FirstOrDefault(list => list.Id == sheet.ChecklistId)
            ?? throw new InvalidOperationException($"Sheet {sheetId} was scored with snapshot {sheet.CourseHash}, which does not have its checklist.");
        var candidate = (await records.LinesAsync([sheet.CandidateId], stored.ScoredOn, cancellation))[sheet.CandidateId];
        var names = await records.NamesOfAsync(
            sheet.Live is { } watched ? [sheet.InstructorId, watched.WatcherId] : [sheet.InstructorId], stored.ScoredOn, cancellation);
        return new()
        {
            Language = language,
            Paper = papers.Size,
            ProviderName = papers.ProviderName,
            CandidateName = candidate.Name,
            BadgeNumber = candidate.BadgeNumber,
            InstructorName = names.GetValueOrDefault(sheet.InstructorId),
            SiteName = $"{beside.Employer}, {beside.Site}",
            ChecklistTitle = checklist.Words[language].Title,
            ChecklistVersion = sheet.ChecklistVersion,
            Subject = sheet.Subject,
            Try = sheet.Try,
            ScoredOn = stored.ScoredOn,
            IdentityConfirmed = sheet.IdentityConfirmed,
            InstructionsLanguage = sheet.Language,
            InstructionsReadAt = sheet.InstructionsReadAt is { } readAt ? There(readAt) : null,
            Surroundings = sheet.Conditions.Surroundings,
            AirTemperature = sheet.Conditions.AirTemperature,
            Kit = sheet.Conditions.Kit,
            Live = sheet.Live is { } live
                ? new(live.PermitNumber, live.BitePlanCheckedOn, There(live.CommunicationsTestedAt), names.GetValueOrDefault(live.WatcherId))
                : null,
            Steps = [.. sheet.Observations.Select(seen => StepOf(checklist, seen, language))],
            Result = last.Result,
            Impression = sheet.Impression,
            Seconds = sheet.Seconds,
            Remarks = sheet.Remarks,
            SeparationReason = beside.Reason,
            SignedName = sheet.SignedName,
            SignedAt = There(sheet.SignedAt),
            CandidateWord = beside.Word is { } word ? WordOf(word, There(word.KeptAt)) : null,
            RecordId = sheet.Id,
            RecordHash = beside.ContentHash,
            IsDemonstration = papers.IsDemonstration,
        };

        DateTimeOffset There(DateTimeOffset instant) => TimeZoneInfo.ConvertTime(instant, there);
    }

    private static ScoresheetStep StepOf(Checklist checklist, StepObservation seen, Language language) => new(
        seen.StepId, checklist.Words[language].StepText[seen.StepId], checklist.Steps.Any(step => step.Id == seen.StepId && step.IsCritical), seen.Observation);

    private static ScoresheetWord WordOf(CandidateWordRecord word, DateTimeOffset keptAt) => (word.Word, word.SignedName, word.Reason) switch
    {
        (CandidateWord.Agreed, { } name, _) => new ScoresheetWord.Agreed(name, keptAt),
        (CandidateWord.Objected, { } name, { } reason) => new ScoresheetWord.Objected(name, reason, keptAt),
        (CandidateWord.DidNotSign, _, { } reason) => new ScoresheetWord.DidNotSign(reason, keptAt),
        _ => throw new UnreachableException(), // the records keep no other
    };
}
