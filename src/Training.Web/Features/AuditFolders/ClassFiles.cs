using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Records;
using Training.Web.Features.Workforce;
using Training.Web.Shelf;
using static Training.Web.Features.AuditFolders.AuditPage;

namespace Training.Web.Features.AuditFolders;

/// <summary>Writes the classes in which people of the folder had seats.</summary>
public sealed class ClassFiles(CourseShelf shelf, IStringLocalizer<AuditFoldersText> text)
{
    /// <summary>Adds the files of every class that the folder remembers.</summary>
    // Who else had a seat is not this folder's business: only how many there were.
    public async Task AddAsync(FolderBeingWritten folder, CancellationToken cancellation)
    {
        var (records, names) = (folder.Records, folder.Names);
        foreach (var ids in folder.Seats.Select(seat => seat.ClassId).Distinct().Order().Chunk(PersonFileQueries.MostFiles))
        {
            var days = await (from day in records.Classes.AsNoTracking()
                              where ids.Contains(day.Id)
                              join site in records.Sites.AsNoTracking() on day.SiteId equals site.Id
                              orderby day.HeldOn, day.Id
                              select new { Day = day, site.Name, site.Zone, Seats = records.SeatsHeld().Count(seat => seat.ClassId == day.Id) }).ToListAsync(cancellation);
            var teachers = (await records.ClassTeachings.AsNoTracking().Where(row => ids.Contains(row.ClassId)).OrderBy(row => row.InstructorId).ToListAsync(cancellation)).ToLookup(row => row.ClassId, row => row.InstructorId);
            var scorers = (await records.ClassScorers.AsNoTracking().Where(row => ids.Contains(row.ClassId)).OrderBy(row => row.InstructorId).ToListAsync(cancellation)).ToLookup(row => row.ClassId, row => row.InstructorId);
            var words = (await records.ClassPresences.AsNoTracking().Where(row => ids.Contains(row.ClassId)).ToListAsync(cancellation))
                .GroupBy(row => (row.ClassId, row.PersonId)).ToDictionary(group => group.Key, group => group.MaxBy(row => row.Number)!); // not null: no group is empty
            var staff = await records.NamesOfAsync(teachers.Concat(scorers).SelectMany(group => group), folder.Scope.Through, cancellation);
            foreach (var one in days)
            {
                var present = folder.Seats.Where(seat => seat.ClassId == one.Day.Id).Select(seat => seat.PersonId).ToList();
                var path = $"classes/{one.Day.HeldOn.Iso()}-{one.Day.CourseId}-{one.Day.Id}";
                await folder.AddAsync($"{path}.json", "class", one.Day.Id, AuditJson.Write(new
                {
                    one.Day.Id, one.Day.SiteId, Site = one.Name, one.Zone, one.Day.HeldOn, one.Day.CourseId, one.Day.Capacity, SeatsTaken = one.Seats,
                    Teachers = teachers[one.Day.Id], Scorers = scorers[one.Day.Id],
                    People = present.Select(id => new { PersonId = id, Said = words.GetValueOrDefault((one.Day.Id, id)) }),
                }), cancellation);
                var page = folder.Page(text["ClassOf", shelf.TitleOf(one.Day.CourseId, folder.Language), one.Day.HeldOn.Iso()])
                    .Fact(text["Site"], one.Name)
                    .Fact(text["TaughtBy"], string.Join(", ", teachers[one.Day.Id].Select(id => text.NameOf(staff, id))))
                    .Fact(text["MayScore"], string.Join(", ", scorers[one.Day.Id].Select(id => text.NameOf(staff, id))))
                    .Fact(text["Seats"], $"{one.Seats} / {one.Day.Capacity}")
                    .Fact(text["RecordId"], one.Day.Id.ToString())
                    .Heading(text["WhoWasThere"])
                    .Table([text["Name"], text["WasThere"], text["Why"]], present.Select(id => (IEnumerable<string>)
                    [
                        Of(names.GetValueOrDefault(id) ?? text["NameErased"]),
                        Of(words.GetValueOrDefault((one.Day.Id, id))?.Presence switch { Presence.Came => text["Yes"], Presence.DidNotCome => text["No"], null => text["NotMarked"] }),
                        Of(words.GetValueOrDefault((one.Day.Id, id))?.Reason),
                    ]));
                await folder.AddAsync($"{path}.html", "class", one.Day.Id, page.ToBytes(), cancellation);
            }
        }
    }
}
