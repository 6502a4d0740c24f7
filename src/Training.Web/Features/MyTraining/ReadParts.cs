using Training.Courses;
using Training.Records;

namespace Training.Web.Features.MyTraining;

/// <summary>What somebody has read. A part about their site counts only where it was read at the site that they work on today.</summary>
public static class ReadParts
{
    /// <summary>The parts that count today, by course; parts that a newer text left out are not among them.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="courses">The courses as they serve.</param>
    /// <param name="personId">Who.</param>
    /// <param name="siteId">Their site today; null for people without one, to whom such a part is like any other.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyDictionary<string, IReadOnlyList<ReadModule>>> ReadPartsAsync(
        this RecordsContext records, IEnumerable<Course> courses, Guid personId, Guid? siteId, CancellationToken cancellation)
    {
        var read = await records.ReadModulesAsync(personId, cancellation);
        var here = siteId is { } site ? await records.ReadAtSiteAsync(personId, site, cancellation) : null;
        return courses.ToDictionary(
            course => course.Id,
            IReadOnlyList<ReadModule> (course) =>
            [
                .. read[course.Id].Where(part => course.Modules.FirstOrDefault(module => module.Id == part.ModuleId) is { } module
                    && (here is null || !module.IsOfSite || here.Contains((course.Id, module.Id)))),
            ],
            StringComparer.Ordinal);
    }
}
