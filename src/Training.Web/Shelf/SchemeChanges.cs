using System.Data.Common;
using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Web.Provider;

namespace Training.Web.Shelf;

/// <summary>A text that is not put in force; the one on the shelf goes on serving.</summary>
/// <param name="Course">The text.</param>
/// <param name="Problem">What is to be mended; null where it only waits, for its first day or for the records.</param>
public sealed record HeldBack(Course Course, Problem? Problem);

/// <summary>Lets a text with changed rules into force only on its first day, and only with a rule for those who are certified by those before.</summary>
/// <remarks>Rule: docs/rules.md, "When the rules of a scheme change".</remarks>
public sealed class SchemeChanges(
    CourseShelf shelf, IDbContextFactory<RecordsContext> factory, OurProvider provider, TimeProvider clock)
{
    /// <summary>Why the text does not replace the one on the shelf today; null where it does.</summary>
    public async Task<HeldBack?> FindReasonAsync(Course newer, CancellationToken cancellation)
    {
        if (shelf.Find(newer.Id) is not { } served) return null;
        var mark = SchemeRules.MarkOf(served);
        var today = provider.DayOf(clock.GetUtcNow());
        if (SchemeRules.MarkOf(newer) == mark) return null;
        if (await IsHeldAsync(served.Scheme.Id, today, cancellation) is not { } isHeld) return new(newer, null);
        if (!isHeld) return null;

        if (newer.Scheme.Transition?.From != mark) return Refuse(newer, ShelfProblems.TransitionMissing, mark);
        if (newer.Scheme.EffectiveFrom <= served.Scheme.EffectiveFrom)
            return Refuse(newer, ShelfProblems.NotLater, served.Scheme.EffectiveFrom.ToString("O", CultureInfo.InvariantCulture));
        return newer.Scheme.EffectiveFrom > today ? new(newer, null) : null;
    }

    // Null: the records cannot be reached. Then nobody knows, and what is in force stays so.
    private async Task<bool?> IsHeldAsync(string schemeId, DateOnly today, CancellationToken cancellation)
    {
        try
        {
            await using var records = await factory.CreateDbContextAsync(cancellation);
            return await records.IsHeldAsync(schemeId, today, cancellation);
        }
        catch (DbException)
        {
            return null;
        }
    }

    private static HeldBack Refuse(Course newer, string code, string argument) =>
        new(newer, new Problem(code, new($"{newer.Id}/course.yaml", null, "scheme"), argument));
}
