using System.Globalization;
using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>Keeps what sites need.</summary>
public static class CoverKeeping
{
    /// <summary>Keeps a need. The same id again is answered with what is stored; refused where the crew is none of the site's.</summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, CoverNeed need, CancellationToken cancellation)
    {
        if (!await records.Sites.AnyAsync(site => site.Id == need.SiteId, cancellation)) return Refuse("site", RecordsProblems.SiteUnknown, need.SiteId.ToString());
        if (need.CrewId is { } crewId && !await records.Crews.AnyAsync(crew => crew.Id == crewId && crew.SiteId == need.SiteId, cancellation))
            return Refuse("crew", RecordsProblems.CrewUnknown, crewId.ToString());
        if (await records.TryInsertAsync(cancellation, need)) return new Kept.Stored(need.Id);
        var stored = await records.CoverNeeds.AsNoTracking().SingleAsync(other => other.Id == need.Id, cancellation);
        return Content(stored) == Content(need) ? new Kept.AlreadyStored(need.Id) : Refuse("need", RecordsProblems.OtherContent, need.Id.ToString());
    }

    private static string Content(CoverNeed need) => string.Create(
        CultureInfo.InvariantCulture, $"{need.SiteId} {need.CrewId} {need.SchemeId} {need.Handlers} {need.StartsOn:O}");

    private static Kept.Refused Refuse(string part, string code, string argument) => new([RecordsProblems.At(part, code, argument)]);
}
