using Microsoft.Extensions.Localization;
using Training.Records;
using Training.Web.Features.Scoring;
using static Training.Web.Features.AuditFolders.AuditPage;
using static Training.Web.Features.AuditFolders.AuditText;

namespace Training.Web.Features.AuditFolders;

/// <summary>Writes scoresheets as they were signed, with what the candidate said to them and their results.</summary>
public sealed class ScoresheetFiles(IStringLocalizer<AuditFoldersText> text, PageWords pages)
{
    /// <summary>Adds the files of one scoresheet, and remembers its rules.</summary>
    public async Task AddAsync(
        FolderBeingWritten folder, StoredScoresheet stored, CandidateWordRecord? word, SeparationReasonRecord? reason, IReadOnlyDictionary<Guid, string> labels,
        IReadOnlyDictionary<Guid, string> names, CancellationToken cancellation)
    {
        var sheet = stored.Sheet;
        var course = await folder.CourseAsync(sheet.CourseHash, cancellation);
        var checklist = course?.Checklists.FirstOrDefault(list => list.Id == sheet.ChecklistId);
        var path = $"people/{sheet.CandidateId}/scoresheets/{stored.ScoredOn.Iso()}-{sheet.ChecklistId}-{sheet.Id}";
        await folder.AddAsync($"{path}.json", "scoresheet", sheet.Id, AuditJson.Write(new
        {
            Sheet = sheet, stored.ScoredOn, stored.Zone, CandidateWord = word, SeparationReason = reason,
            Results = stored.Results.Select(one => new
            {
                one.Id, one.GradedAt, one.Result.ChecklistVersion, one.Result.Outcome, one.Result.Points, one.Result.MaxPoints, Reasons = one.Result.Reasons.Select(AuditJson.Case),
            }),
        }), cancellation);

        var page = folder.Page(text["SheetOf", checklist?.Words[folder.Language].Title ?? sheet.ChecklistId, text.NameOf(names, sheet.CandidateId)])
            .Fact(text["Day"], $"{stored.ScoredOn.Iso()} ({stored.Zone})")
            .Fact(text["Subject"], pages.Scoring.Of(sheet.Subject)).Fact(text["Try"], Number(sheet.Try))
            .Fact(text["ScoredBy"], text.NameOf(names, sheet.InstructorId))
            .Fact(text["Signed"], $"{sheet.SignedName}, {Instant(sheet.SignedAt)}")
            .Fact(text["Identity"], sheet.IdentityConfirmed ? text["Yes"] : text["No"])
            .Fact(text["InstructionsRead"], sheet.InstructionsReadAt is { } readAt ? Instant(readAt) : null)
            .Fact(text["Surroundings"], sheet.Conditions.Surroundings)
            .Fact(text["AirTemperature"], sheet.Conditions.AirTemperature is { } air ? $"{Number(air)} °C" : null)
            .Fact(text["Kit"], sheet.Conditions.Kit)
            .Fact(text["KitRegister"], string.Join(", ", sheet.Conditions.Pieces.Select(piece => $"{labels.GetValueOrDefault(piece.PieceId)} ({piece.InspectionId})")))
            .Fact(text["Permit"], sheet.Live?.PermitNumber).Fact(text["BitePlanChecked"], sheet.Live?.BitePlanCheckedOn.Iso())
            .Fact(text["CallTested"], sheet.Live is { } live ? Instant(live.CommunicationsTestedAt) : null)
            .Fact(text["Watcher"], sheet.Live is { } watched ? text.NameOf(names, watched.WatcherId) : null)
            .Fact(text["Impression"], pages.Scoring.Of(sheet.Impression))
            .Fact(text["Seconds"], sheet.Seconds is { } seconds ? ScoringWords.Clock(seconds) : null)
            .Fact(text["Remarks"], sheet.Remarks)
            .Fact(text["CandidateSaid"], word is null ? null : string.Join(", ", new[] { Said(word.Word), word.SignedName, word.Reason, Instant(word.KeptAt) }.OfType<string>()))
            .Fact(text["Exception"], reason?.Reason)
            .Fact(text["RulesHash"], sheet.CourseHash).Fact(text["RecordId"], sheet.Id.ToString());
        foreach (var result in stored.Results)
        {
            page.Heading(text["ResultNumber", result.Id]).Fact(text["Points"], $"{result.Result.Points} / {result.Result.MaxPoints}").Fact(text["GradedAt"], Instant(result.GradedAt));
            if (checklist is null) continue;
            page.Fact(text["Outcome"], pages.Scoring.Says(result.Result, checklist));
            foreach (var because in pages.Scoring.Because(result.Result.Reasons, checklist)) page.Fact(text["WhyNot"], because);
        }

        page.Heading(text["Steps"]).Table(
            [text["Number"], text["Step"], text["Critical"], text["Mark"]],
            sheet.Observations.Index().Select(one => (IEnumerable<string>)
            [
                Of(Number(one.Index + 1)),
                checklist?.Words[folder.Language].StepHtml.GetValueOrDefault(one.Item.StepId) ?? Of(one.Item.StepId),
                Of(checklist?.Steps.FirstOrDefault(step => step.Id == one.Item.StepId)?.IsCritical == true ? text["Yes"] : ""),
                Of(pages.Scoring.Of(one.Item.Observation)),
            ]));
        await folder.AddAsync($"{path}.html", "scoresheet", sheet.Id, page.ToBytes(), cancellation);
    }

    private string Said(CandidateWord word) => word switch
    {
        CandidateWord.Agreed => text["Agreed"],
        CandidateWord.Objected => text["Objected"],
        CandidateWord.DidNotSign => text["DidNotSign"],
    };
}
