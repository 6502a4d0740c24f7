using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Features.Decisions;
using Training.Web.Features.Reminders;
using Training.Web.Provider;
using Training.Web.Settings;
using Training.Web.Shelf;

namespace Training.Web.Features.Corrections;

/// <summary>Grades sittings again because a question turned out wrong: first to look at, then to keep.</summary>
/// <remarks>Rule: docs/rules.md, "When a question turns out wrong".</remarks>
public sealed class Regrading(
    CorrectionReading corrections, CoursesByHash courses, CourseShelf shelf, RuleDecisions decisions, TrainingOptions options, OurProvider provider,
    TimeProvider clock)
{
    private const int Batch = 100;

    /// <summary>What a correction would change, sitting by sitting; nothing is kept.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="course">As it serves.</param>
    /// <param name="correction">The one to try, before all that count already.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public async Task<RegradePreview> PreviewAsync(RecordsContext records, Course course, KeyCorrection correction, CancellationToken cancellation)
    {
        var all = With(correction, await corrections.ReadAsync(records, course.Id, cancellation));
        var (drawn, changed) = (0, new List<RegradedSitting>());
        var after = Guid.Empty;
        while (await records.DrawnAfterAsync(correction.QuestionId, correction.Version, after, Batch, cancellation) is { Count: > 0 } page)
        {
            foreach (var stored in await records.StoredSittingsAsync([.. page.Select(one => one.FormId)], cancellation))
            {
                drawn++;
                var (was, now) = (stored.Results[^1].Result, await RegradeAsync(records, course.Id, stored, all, cancellation));
                if (!HasChanged(was, now)) continue;
                changed.Add(new(
                    stored.Sitting.Id, stored.Sitting.PersonId, stored.TakenOn, was.IsPassed, was.Points, was.MaxPoints, now.IsPassed, now.Points, now.MaxPoints));
            }

            after = page[^1].Key;
        }

        return new(drawn, [.. changed.OrderByDescending(one => one.WasPassed != one.IsPassed).ThenByDescending(one => one.TakenOn)]);
    }

    /// <summary>
    /// Grades what does not follow a correction yet, and tells everybody whose result changes. Safe to break off and to run again, also twice at
    /// once: each sitting is graded and told of once.
    /// </summary>
    /// <returns>How many sittings got a result.</returns>
    public async Task<int> ApplyAsync(RecordsContext records, KeyCorrectionRecord correction, CancellationToken cancellation)
    {
        // What a later correction of the same text replaced asks for nothing any more: grading by the later one would never end its waiting.
        if (!await records.IsCountingAsync(correction, cancellation)) return 0;
        var all = await corrections.ReadAsync(records, correction.CourseId, cancellation);
        var graded = 0;
        while (await records.NotYetRegradedAsync(correction, Batch, cancellation) is { Count: > 0 } waiting)
        {
            foreach (var stored in await records.StoredSittingsAsync(waiting, cancellation))
            {
                if (await KeepAsync(records, correction, stored, all, cancellation)) graded++;
            }
        }

        return graded;
    }

    private async Task<bool> KeepAsync(
        RecordsContext records, KeyCorrectionRecord correction, StoredSitting stored, IReadOnlyList<KeyCorrection> all, CancellationToken cancellation)
    {
        var now = clock.GetUtcNow();
        var (was, result) = (stored.Results[^1].Result, await RegradeAsync(records, correction.CourseId, stored, all, cancellation));
        var mails = HasChanged(was, result) ? await MailsAsync(records, correction, stored, was, result, now, cancellation) : [];
        if (!await records.KeepRegradedAsync(stored.Sitting.Id, stored.Results.Count, result, correction.Id, mails, now, cancellation)) return false;
        if (result.IsPassed && !was.IsPassed)
            await decisions.DecideAsync(records, stored.Sitting.PersonId, stored.Sitting.Draw.QuizId, stored.Zone, now, cancellation);
        return true;
    }

    private async Task<SittingResult> RegradeAsync(
        RecordsContext records, string courseId, StoredSitting stored, IReadOnlyList<KeyCorrection> all, CancellationToken cancellation)
    {
        var hash = stored.Sitting.Draw.CourseHash;
        var course = await courses.FindAsync(records, courseId, hash, cancellation)
            ?? throw new InvalidOperationException($"Snapshot {hash} was drawn from and never kept.");
        var problems = new List<Problem>();
        return SittingGrader.Regrade(course, stored.Sitting, all, problems)
            ?? throw new InvalidOperationException($"Sitting {stored.Sitting.Id} was graded before and cannot be graded now: {problems[0].Code}.");
    }

    private async Task<IReadOnlyList<OutgoingMail>> MailsAsync(
        RecordsContext records, KeyCorrectionRecord correction, StoredSitting stored, SittingResult was, SittingResult result, DateTimeOffset now,
        CancellationToken cancellation)
    {
        var (personId, today) = (stored.Sitting.PersonId, DateOnly.FromDateTime(now.UtcDateTime));
        var name = (await records.NamesOfAsync([personId], today, cancellation)).GetValueOrDefault(personId);
        var mails = new List<OutgoingMail>();
        foreach (var told in await records.ToldOfResultAsync(personId, today, cancellation))
        {
            var to = await records.GetRecipientAsync(told, cancellation);
            if (to.Address is null) continue;
            var title = shelf.Find(correction.CourseId)?.Scheme.Words[to.Language].Title ?? correction.CourseId;
            var page = options.PublicPage(told == personId ? $"{to.Language.Tag()}/my/sittings/{stored.Sitting.Id}" : to.Language.Tag());
            mails.Add(Letter.OfCorrection(told == personId ? null : name, title, stored.TakenOn, was, result, correction.Reason, page, provider.Name, to.Language).To(to, now));
        }

        return mails;
    }

    private static bool HasChanged(SittingResult was, SittingResult now) =>
        (was.IsPassed, was.Points, was.MaxPoints) != (now.IsPassed, now.Points, now.MaxPoints);

    private static IReadOnlyList<KeyCorrection> With(KeyCorrection correction, IEnumerable<KeyCorrection> others) =>
        [correction, .. others.Where(other => (other.QuestionId, other.Version) != (correction.QuestionId, correction.Version))];
}

/// <summary>What a correction would change.</summary>
/// <param name="Drawn">Sittings that drew the question.</param>
/// <param name="Changed">Those whose result would change; those who would pass or fail anew first.</param>
public sealed record RegradePreview(int Drawn, IReadOnlyList<RegradedSitting> Changed)
{
    /// <summary>How many would pass that did not.</summary>
    public int PassAnew => Changed.Count(one => one.IsPassed && !one.WasPassed);

    /// <summary>How many would no longer pass.</summary>
    public int FailAnew => Changed.Count(one => !one.IsPassed && one.WasPassed);
}
