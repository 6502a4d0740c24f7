using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Records;

namespace Training.Web.Demo;

/// <summary>What candidates of the demo said to their sheets, and what became of their appeals.</summary>
/// <param name="data">What happened.</param>
/// <param name="ids">Of people and sheets, by row id.</param>
/// <param name="at">An hour of a day so many days ago, UTC.</param>
internal sealed class DemoAppeals(DemoData data, IReadOnlyDictionary<string, Guid> ids, Func<int, DateTimeOffset> at)
{
    // Of each appeal as it was kept, by person: the demo has one each.
    private readonly Dictionary<string, Guid> kept = new(StringComparer.Ordinal);

    /// <summary>The word to a sheet that was just kept; an objection is an appeal.</summary>
    public async Task<Kept?> SayAsync(RecordsContext records, DemoScoresheet sheet, CancellationToken cancellation)
    {
        if (data.CandidateWords.FirstOrDefault(row => row.Sheet == sheet.Sheet) is not { } said) return null;
        var (form, now) = (ids[sheet.Sheet], at(sheet.DaysAgo));
        var row = await records.Scoresheets.AsNoTracking().SingleAsync(one => one.FormId == form && one.Copy == 1, cancellation);
        var candidate = data.People.Single(one => one.Person == sheet.Candidate);
        var word = new CandidateWordRecord
        {
            Id = Guid.CreateVersion7(now), ScoresheetId = row.Id, ContentHash = row.ContentHash, Language = row.Language, InstructorId = row.InstructorId, KeptAt = now,
            Word = said.Word switch { "agreed" => CandidateWord.Agreed, "objected" => CandidateWord.Objected, _ => CandidateWord.DidNotSign },
            SignedName = said.Word == "did-not-sign" ? null : candidate.FullName, Reason = said.Reason.Length > 0 ? said.Reason : null,
        };
        if (word.Word != CandidateWord.Objected) return await records.KeepAsync(word, null, null, cancellation);
        kept[sheet.Candidate] = word.Id;
        return await records.KeepAsync(
            word, new(word.Id, row.CandidateId, AppealMatter.Scoresheet, form, said.Reason, row.InstructorId, row.ScoredOn, data.Provider.Zone), null, cancellation);
    }

    /// <summary>Keeps an appeal; one that an objection opened is there already.</summary>
    public async Task<Kept?> AppealAsync(RecordsContext records, DemoAppeal row, CancellationToken cancellation)
    {
        if (row.Matter == "objection") return null;
        var now = at(row.DaysAgo);
        var id = kept[row.Person] = Guid.CreateVersion7(now);
        var (matter, contested) = row.Sheet.Length > 0 ? (AppealMatter.Scoresheet, ids[row.Sheet]) : (AppealMatter.Complaint, id);
        return await records.KeepAsync(
            new(id, ids[row.Person], matter, contested, row.Words, ids[row.Person], DayOf(now), data.Provider.Zone), null, now, cancellation);
    }

    /// <summary>Takes it up.</summary>
    public Task<Kept> TakeUpAsync(RecordsContext records, DemoAppeal row, CancellationToken cancellation)
    {
        var now = at(row.TakenUpDaysAgo!.Value); // not null: only such rows come here
        return records.TakeUpAsync(kept[row.Person], ids[row.TakenUpBy], DayOf(now), null, now, cancellation);
    }

    /// <summary>Decides it.</summary>
    public Task<Kept> DecideAsync(RecordsContext records, DemoAppeal row, CancellationToken cancellation)
    {
        var now = at(row.DecidedDaysAgo!.Value); // not null: only such rows come here
        return records.DecideAsync(
            new()
            {
                AppealId = kept[row.Person], Outcome = row.Outcome!.Value, Remedy = row.Remedy, Reason = row.Reason, LeadId = ids[row.DecidedBy],
                DecidedOn = DayOf(now), KeptAt = now,
            },
            null, cancellation);
    }

    private DateOnly DayOf(DateTimeOffset instant) => DecisionDay.On(instant, TimeZoneInfo.FindSystemTimeZoneById(data.Provider.Zone));
}
