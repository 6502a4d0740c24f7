using Training.Courses;

namespace Training.Web.Features.Guidance;

/// <summary>All guidance by subject, and where each entry is used.</summary>
/// <param name="Subjects">In the order of the file.</param>
/// <param name="Today">The day that "in force" means.</param>
public sealed record GuidancePage(IReadOnlyList<(string Title, IReadOnlyList<GuidanceLine> Entries)> Subjects, DateOnly Today)
{
    /// <summary>The page in one language.</summary>
    public static GuidancePage Of(CourseReading reading, DateOnly today, Language language)
    {
        var uses = reading.GuidanceUses.ToLookup(use => use.EntryId, use => use.Place, StringComparer.Ordinal);
        return new(
            [
                .. reading.Guidance.Entries.GroupBy(entry => entry.Subject, StringComparer.Ordinal).Select(group => (
                    reading.Guidance.SubjectText(group.Key, language),
                    (IReadOnlyList<GuidanceLine>)[
                        .. group.OrderBy(entry => entry.SupersededBy is not null).ThenByDescending(entry => entry.EffectiveFrom).Select(entry => new GuidanceLine(
                            entry, reading.Guidance.Text(entry.Value, language) ?? entry.Id, [.. uses[entry.Id]]))])),
            ],
            today);
    }
}

/// <summary>One entry.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Value">In words.</param>
/// <param name="Places">Where files name it: what a change of it touches.</param>
public sealed record GuidanceLine(GuidanceEntry Entry, string Value, IReadOnlyList<Place> Places);
