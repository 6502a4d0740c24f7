using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;

namespace Training.Web.Features.AuditFolders;

/// <summary>Writes the evidence of people, a batch at a time.</summary>
public sealed class PersonFiles(StandingFiles standings, DecisionFiles decisions, SittingFiles asSat, ScoresheetFiles asSigned)
{
    /// <summary>Adds the files of a batch of people, and remembers their names, classes and rules.</summary>
    public async Task AddAsync(FolderBeingWritten folder, IReadOnlyList<Guid> ids, CancellationToken cancellation)
    {
        var records = folder.Records;
        var audited = await records.AuditedAsync(ids, folder.Scope, cancellation);
        var sittings = (await records.StoredSittingsAsync([.. audited.SelectMany(person => person.SittingFormIds)], cancellation)).ToDictionary(one => one.Sitting.Id);
        var formIds = audited.SelectMany(person => person.ScoresheetFormIds).ToList();
        var sheets = (await records.StoredScoresheetsAsync(formIds, cancellation)).ToDictionary(one => one.Sheet.Id);
        var beside = await (from sheet in records.Scoresheets.AsNoTracking()
                            where formIds.Contains(sheet.FormId) && sheet.Copy == 1
                            join word in records.CandidateWords.AsNoTracking() on sheet.Id equals word.ScoresheetId into words
                            from word in words.DefaultIfEmpty()
                            join reason in records.SeparationReasons.AsNoTracking() on sheet.Id equals reason.ScoresheetId into reasons
                            from reason in reasons.DefaultIfEmpty()
                            select new { sheet.FormId, Word = word, Reason = reason }).ToDictionaryAsync(row => row.FormId, cancellation);
        var pieces = sheets.Values.SelectMany(one => one.Sheet.Conditions.Pieces).Select(piece => piece.PieceId).Distinct().ToList();
        var labels = await records.KitPieces.Where(piece => pieces.Contains(piece.Id)).ToDictionaryAsync(piece => piece.Id, piece => piece.Label, cancellation);
        var named = ids.Concat(audited.SelectMany(person => person.Decisions).Select(row => row.LeadId).OfType<Guid>())
            .Concat(audited.SelectMany(person => person.Decisions).SelectMany(row => row.Exceptions).Select(row => row.ScorerId))
            .Concat(audited.SelectMany(person => person.Suspensions).Select(row => row.LeadId)).Concat(audited.SelectMany(person => person.Reinstatements).Select(row => row.LeadId))
            .Concat(audited.SelectMany(person => person.Withdrawals).SelectMany(row => new[] { row.LeadId, row.ConfirmedById }))
            .Concat(sheets.Values.SelectMany(one => new[] { one.Sheet.InstructorId, one.Sheet.Live?.WatcherId ?? one.Sheet.InstructorId }));
        var names = await records.NamesOfAsync(named, folder.Scope.Through, cancellation);
        foreach (var person in audited)
        {
            var files = new List<(string, string)>();
            folder.Names[person.PersonId] = names.GetValueOrDefault(person.PersonId);
            await standings.AddAsync(folder, person, names, cancellation);
            foreach (var decision in person.Decisions) await decisions.AddAsync(folder, person, decision, names, cancellation);
            foreach (var paper in person.Papers) await AddCertificateAsync(folder, person.PersonId, paper, cancellation);
            foreach (var id in person.SittingFormIds.Where(sittings.ContainsKey)) await asSat.AddAsync(folder, person.PersonId, sittings[id], names, cancellation);
            foreach (var id in person.ScoresheetFormIds.Where(sheets.ContainsKey))
            {
                var (word, reason) = beside.TryGetValue(id, out var rows) ? (rows.Word, rows.Reason) : (null, null);
                await asSigned.AddAsync(folder, sheets[id], word, reason, labels, names, cancellation);
            }

            foreach (var id in person.Classes) folder.Seats.Add((id, person.PersonId));
        }
    }

    // One paper's files at a time: those of a batch of people would not fit into memory.
    private static async Task AddCertificateAsync(FolderBeingWritten folder, Guid personId, PaperRecord paper, CancellationToken cancellation)
    {
        var files = await folder.Records.Renderings.AsNoTracking().Where(file => file.PaperId == paper.Id && file.Format == RenderingFormat.CertificatePdf)
            .OrderBy(file => file.Language).ToListAsync(cancellation);
        foreach (var file in files)
        {
            await folder.Zip.AddAsync(
                $"people/{personId}/certificates/{paper.Serial}-{file.Language.Tag()}.pdf", "certificate", paper.Id.ToString(), file.Bytes, cancellation, file.Sha256);
        }
    }
}
