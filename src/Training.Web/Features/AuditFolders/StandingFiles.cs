using Microsoft.Extensions.Localization;
using Training.Records;
using Training.Web.Features.Workforce;
using Training.Web.Shelf;
using static Training.Web.Features.AuditFolders.AuditPage;
using static Training.Web.Features.AuditFolders.AuditText;

namespace Training.Web.Features.AuditFolders;

/// <summary>Writes how somebody's certifications stood: their periods and what sanctions touched them.</summary>
public sealed class StandingFiles(CourseShelf shelf, IStringLocalizer<AuditFoldersText> text)
{
    /// <summary>Adds the files of one person; none where no period touches the scope.</summary>
    public async Task AddAsync(FolderBeingWritten folder, AuditedPerson person, IReadOnlyDictionary<Guid, string> names, CancellationToken cancellation)
    {
        if (person.Periods.Count == 0) return;
        var path = $"people/{person.PersonId}/standing";
        await folder.AddAsync($"{path}.json", "standing", person.PersonId, AuditJson.Write(new
        {
            person.PersonId, person.Periods, person.Suspensions, person.Reinstatements, person.Withdrawals,
        }), cancellation);
        var page = folder.Page(text["StandingOf", text.NameOf(names, person.PersonId)]);
        page.Heading(text["Periods"]).Table(
            [text["Scheme"], text["Number"], text["FirstDay"], text["LastDay"], text["GraceThrough"]],
            person.Periods.Select(row => (IEnumerable<string>)[Of(shelf.TitleOf(row.SchemeId, folder.Language)), Of(Number(row.Number)), Of(row.StartsOn.Iso()), Of(row.ExpiresOn.Iso()), Of(row.GraceEndsOn.Iso())]));
        if (person.Suspensions.Count > 0)
        {
            page.Heading(text["Suspensions"]).Table(
                [text["Scheme"], text["FirstDay"], text["By"], text["Why"], text["SettleBy"], text["Reinstated"]],
                person.Suspensions.Select(row =>
                {
                    var end = person.Reinstatements.FirstOrDefault(one => one.SuspensionId == row.Id);
                    return (IEnumerable<string>)
                    [
                        Of(shelf.TitleOf(row.SchemeId, folder.Language)), Of(row.StartsOn.Iso()), Of(text.NameOf(names, row.LeadId)), Of(row.Reason), Of(row.DeadlineOn.Iso()),
                        Of(end is null ? "" : $"{end.ReinstatedOn.Iso()}, {text.NameOf(names, end.LeadId)}: {end.Reason}"),
                    ];
                }));
        }

        if (person.Withdrawals.Count > 0)
        {
            page.Heading(text["Withdrawals"]).Table(
                [text["Scheme"], text["FirstDay"], text["By"], text["ConfirmedBy"], text["Why"]],
                person.Withdrawals.Select(row => (IEnumerable<string>)
                    [Of(shelf.TitleOf(row.SchemeId, folder.Language)), Of(row.WithdrawnOn.Iso()), Of(text.NameOf(names, row.LeadId)), Of(text.NameOf(names, row.ConfirmedById)), Of(row.Reason)]));
        }

        await folder.AddAsync($"{path}.html", "standing", person.PersonId, page.ToBytes(), cancellation);
    }
}
