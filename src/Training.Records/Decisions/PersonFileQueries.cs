using Microsoft.EntityFrameworkCore;
using Training.Certification;

namespace Training.Records;

/// <summary>Reads what decisions are made from, for several people at once.</summary>
public static class PersonFileQueries
{
    /// <summary>Most people whose files are read at once.</summary>
    public const int MostFiles = 200;

    /// <summary>A file for each of these people, by id: one query a kind of row, however many they are. Somebody unknown has an empty file.</summary>
    /// <exception cref="ArgumentOutOfRangeException">More than <see cref="MostFiles"/> people.</exception>
    public static async Task<IReadOnlyDictionary<Guid, PersonFile>> PersonFilesAsync(
        this RecordsContext records, IReadOnlyList<Guid> personIds, CancellationToken cancellation)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(personIds.Count, MostFiles, nameof(personIds));
        var ids = personIds.Distinct().ToList();
        var sittings = (await records.SittingEvidenceAsync(ids, cancellation)).ToLookup(evidence => evidence.PersonId);
        var sheets = (await records.ScoresheetEvidenceAsync(ids, cancellation)).ToLookup(evidence => evidence.PersonId);
        var taught = (await records.TeachingsOfAsync(ids, cancellation)).ToLookup(teaching => teaching.PersonId);
        var held = (await records.HeldCertificationsAsync(ids, cancellation)).ToLookup(certification => certification.PersonId);
        return ids.ToDictionary(id => id, id => new PersonFile(
            id,
            [.. sittings[id].Take(Bounds.RowsOfOnePerson), .. sheets[id].Take(Bounds.RowsOfOnePerson)],
            [.. taught[id].Take(Bounds.RowsOfOnePerson)],
            [.. held[id]]));
    }

    private static async Task<List<Evidence>> SittingEvidenceAsync(
        this RecordsContext records, List<Guid> ids, CancellationToken cancellation)
    {
        var rows = await (from sitting in records.CountingSittings()
                          where ids.Contains(sitting.PersonId)
                          join result in records.SittingResults on sitting.Id equals result.SittingId
                          where result.Number == records.SittingResults.Where(other => other.SittingId == sitting.Id).Max(other => other.Number)
                          orderby sitting.TakenOn descending
                          select new { result.Id, sitting.PersonId, sitting.TakenOn, sitting.QuizId, result.IsPassed })
            .Take(ids.Count * Bounds.RowsOfOnePerson).ToListAsync(cancellation);
        return rows.ConvertAll<Evidence>(row => new Evidence.OfQuiz
        {
            ResultId = row.Id, PersonId = row.PersonId, On = row.TakenOn, QuizId = row.QuizId, IsPassed = row.IsPassed,
        });
    }

    private static async Task<List<Evidence>> ScoresheetEvidenceAsync(
        this RecordsContext records, List<Guid> ids, CancellationToken cancellation)
    {
        var rows = await (from sheet in records.CountingScoresheets()
                          where ids.Contains(sheet.CandidateId)
                          join result in records.ScoresheetResults on sheet.Id equals result.ScoresheetId
                          where result.Number == records.ScoresheetResults.Where(other => other.ScoresheetId == sheet.Id).Max(other => other.Number)
                          join separation in records.SeparationReasons on sheet.Id equals separation.ScoresheetId into separations
                          from separation in separations.DefaultIfEmpty()
                          orderby sheet.ScoredOn descending
                          select new
                          {
                              result.Id, sheet.CandidateId, sheet.ScoredOn, sheet.ClassId, sheet.Try, sheet.ChecklistId, sheet.Subject, result.Outcome, sheet.InstructorId,
                              Reason = separation == null ? null : separation.Reason,
                          })
            .Take(ids.Count * Bounds.RowsOfOnePerson).ToListAsync(cancellation);
        return rows.ConvertAll<Evidence>(row => new Evidence.OfPractical
        {
            ResultId = row.Id,
            PersonId = row.CandidateId,
            On = row.ScoredOn,
            ClassId = row.ClassId,
            Try = row.Try,
            ChecklistId = row.ChecklistId,
            Subject = row.Subject,
            Outcome = row.Outcome,
            ScorerId = row.InstructorId,
            SeparationReason = row.Reason,
        });
    }
}
