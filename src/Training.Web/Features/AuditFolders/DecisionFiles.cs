using Microsoft.Extensions.Localization;
using Training.Records;
using Training.Web.Features.Programme;
using Training.Web.Shelf;
using Training.Web.Features.Workforce;

namespace Training.Web.Features.AuditFolders;

/// <summary>Writes decisions: who decided what, by which rules, on what evidence.</summary>
public sealed class DecisionFiles(CourseShelf shelf, IStringLocalizer<AuditFoldersText> text, PageWords pages)
{
    /// <summary>Adds the files of one decision, and remembers its rules.</summary>
    public async Task AddAsync(
        FolderBeingWritten folder, AuditedPerson person, DecisionRecord row, IReadOnlyDictionary<Guid, string> names, CancellationToken cancellation)
    {
        folder.Rules.Add((row.SchemeId, row.CourseHash));
        var period = person.Periods.FirstOrDefault(one => one.DecisionId == row.Id);
        var path = $"people/{row.PersonId}/decisions/{row.DecidedOn.Iso()}-{row.SchemeId}-{row.Id}";
        await folder.AddAsync($"{path}.json", "decision", row.Id, AuditJson.Write(new
        {
            row.Id, row.PersonId, row.SchemeId, row.CourseHash, row.Route, row.Outcome, row.DecidedOn, row.Zone, row.LeadId, Reasons = AuditJson.Stored(row.Reasons),
            row.KeptAt, Period = period, RestsOn = row.Evidence.OrderBy(one => one.Position).Select(one => new { one.SittingResultId, one.ScoresheetResultId }),
            Exceptions = row.Exceptions.OrderBy(one => one.ScoresheetResultId),
        }), cancellation);
        var titles = shelf.Courses.Titles(folder.Language);
        var words = pages.Decisions(titles, names);
        var page = folder.Page(text["DecisionOf", shelf.TitleOf(row.SchemeId, folder.Language), text.NameOf(names, row.PersonId)])
            .Fact(text["DecidedOn"], $"{row.DecidedOn.Iso()} ({row.Zone})")
            .Fact(text["DecidedBy"], row.LeadId is { } lead ? text.NameOf(names, lead) : text["TheRule"])
            .Fact(text["Outcome"], (row.Outcome, row.Route) switch
            {
                (DecisionOutcome.Granted, Certification.Route.Grant) => text["Granted"],
                (DecisionOutcome.Granted, Certification.Route.Renewal) => text["Renewed"],
                (DecisionOutcome.NotYet, _) => text["NotYet"],
                (DecisionOutcome.Refused, _) => text["Refused"],
                _ => throw new System.Diagnostics.UnreachableException(),
            })
            .Fact(text["HoldsFrom"], period is null ? null : $"{period.StartsOn.Iso()} – {period.ExpiresOn.Iso()}")
            .Fact(text["RulesHash"], row.CourseHash)
            .Fact(text["RecordId"], row.Id.ToString());
        foreach (var reason in row.ReadReasons()) page.Fact(text["WhyNot"], words.Of(reason));
        foreach (var one in row.Evidence.OrderBy(one => one.Position)) page.Fact(text["RestsOn"], (one.SittingResultId ?? one.ScoresheetResultId).ToString());
        foreach (var one in row.Exceptions.OrderBy(one => one.ScoresheetResultId)) page.Fact(text["Exception"], $"{text.NameOf(names, one.ScorerId)}: {one.Reason}");
        page.Link(text["ToRules"], $"../../../{FolderBeingWritten.RulesPath(row.SchemeId, row.CourseHash)}.html");
        await folder.AddAsync($"{path}.html", "decision", row.Id, page.ToBytes(), cancellation);
    }
}
