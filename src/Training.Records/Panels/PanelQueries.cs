using Microsoft.EntityFrameworkCore;
using Training.Scoring;

namespace Training.Records;

/// <summary>One panel in a list.</summary>
/// <param name="Id">For addresses.</param>
/// <param name="CourseId">Which course.</param>
/// <param name="TargetId">Quiz or checklist.</param>
/// <param name="OpenedAt">UTC.</param>
/// <param name="Judges">How many.</param>
/// <param name="RoundsEnded">0 to 2.</param>
/// <param name="PassPercent">Of the last adoption, or null.</param>
public sealed record PanelLine(Guid Id, string CourseId, string TargetId, DateTimeOffset OpenedAt, int Judges, int RoundsEnded, int? PassPercent);

/// <summary>Reads panels and what stored sittings say beside them.</summary>
public static class PanelQueries
{
    private const int MostPanels = 200;

    /// <summary>All panels, the newest first.</summary>
    public static async Task<IReadOnlyList<PanelLine>> PanelsAsync(this RecordsContext records, CancellationToken cancellation) =>
        await records.Panels.OrderByDescending(panel => panel.OpenedAt).Take(MostPanels).Select(panel => new PanelLine(
            panel.Id, panel.CourseId, panel.TargetId, panel.OpenedAt,
            records.PanelJudges.Count(judge => judge.PanelId == panel.Id),
            records.PanelRoundEnds.Count(end => end.PanelId == panel.Id),
            records.CutAdoptions.Where(row => row.PanelId == panel.Id).OrderByDescending(row => row.KeptAt).Select(row => (int?)row.PassPercent).FirstOrDefault()))
            .ToListAsync(cancellation);

    /// <summary>Panels that wait for a word of this person, the newest first.</summary>
    public static async Task<IReadOnlyList<Panel>> PanelsToRateAsync(this RecordsContext records, Guid personId, CancellationToken cancellation) =>
        await records.Panels.AsNoTracking()
            .Where(panel => records.PanelJudges.Any(judge => judge.PanelId == panel.Id && judge.PersonId == personId)
                && records.PanelRoundEnds.Count(end => end.PanelId == panel.Id) < PanelFile.Rounds)
            .OrderByDescending(panel => panel.OpenedAt).Take(MostPanels).ToListAsync(cancellation);

    /// <summary>A panel with what counts in it, or null.</summary>
    public static async Task<PanelFile?> FindPanelAsync(this RecordsContext records, Guid panelId, CancellationToken cancellation)
    {
        if (await records.Panels.AsNoTracking().SingleOrDefaultAsync(row => row.Id == panelId, cancellation) is not { } panel) return null;
        var judges = await records.PanelJudges.AsNoTracking().Where(row => row.PanelId == panelId).OrderBy(row => row.Number).ToListAsync(cancellation);
        var ends = await records.PanelRoundEnds.AsNoTracking().Where(row => row.PanelId == panelId).OrderBy(row => row.Round).ToListAsync(cancellation);
        var ratings = new Dictionary<(Guid JudgeId, int Round), IReadOnlyDictionary<string, int>>();
        var rows = from rating in records.PanelRatings
                   join judge in records.PanelJudges on rating.JudgeId equals judge.Id
                   where judge.PanelId == panelId
                   orderby rating.KeptAt, rating.FormId
                   select rating;
        await foreach (var rating in rows.AsNoTracking().AsAsyncEnumerable().WithCancellation(cancellation))
        {
            // A word that came while the lead ended the round did not stand in what the judges then saw.
            if (ends.Find(end => end.Round == rating.Round) is { } end && rating.KeptAt > end.EndedAt) continue;
            var key = (rating.JudgeId, rating.Round);
            if (!ratings.TryGetValue(key, out var said)) ratings[key] = said = new Dictionary<string, int>(StringComparer.Ordinal);
            ((Dictionary<string, int>)said)[rating.ItemId] = rating.Percent;
        }

        var ids = judges.ConvertAll(judge => judge.Id);
        var bounds = await records.PanelBounds.AsNoTracking().Where(row => ids.Contains(row.JudgeId)).OrderBy(row => row.KeptAt).ThenBy(row => row.Id)
            .ToListAsync(cancellation);
        var adoptions = await records.CutAdoptions.AsNoTracking().Where(row => row.PanelId == panelId).OrderBy(row => row.KeptAt).ToListAsync(cancellation);
        return new(panel, judges, ends, ratings, bounds.GroupBy(row => row.JudgeId).ToDictionary(group => group.Key, group => group.Last()), adoptions);
    }

    /// <summary>How many people had each number of points, from 0 to the most, in their first sitting of a quiz, as graded last.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="quizId">Which quiz.</param>
    /// <param name="maxPoints">Sittings of other lengths are left out: their points are others.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyList<int>> FirstScoresAsync(
        this RecordsContext records, string quizId, int maxPoints, CancellationToken cancellation)
    {
        var people = new int[maxPoints + 1];
        var scores = await (from sitting in records.FirstSittings(quizId)
                            join result in records.SittingResults on sitting.Id equals result.SittingId
                            where result.MaxPoints == maxPoints
                                && !records.SittingResults.Any(later => later.SittingId == sitting.Id && later.Number > result.Number)
                            group result by result.Points into score
                            select new { Points = score.Key, Count = score.Count() }).ToListAsync(cancellation);
        foreach (var score in scores) people[score.Points] = score.Count;
        return people;
    }

    /// <summary>How often each question was asked and answered right in these versions, over sittings as graded last.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="versions">Version of each question by its id.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyDictionary<string, (int Asked, int Right)>> SharesRightAsync(
        this RecordsContext records, IReadOnlyDictionary<string, string> versions, CancellationToken cancellation)
    {
        List<string> known = [.. versions.Values];
        var counts = await (from mark in records.Set<QuestionResultRecord>()
                            join result in records.SittingResults on mark.ResultId equals result.Id
                            join sitting in records.Sittings on result.SittingId equals sitting.Id
                            where sitting.Copy == 1 && mark.Mark != Mark.LeftOut && known.Contains(mark.QuestionVersion)
                                && !records.SittingResults.Any(later => later.SittingId == sitting.Id && later.Number > result.Number)
                            group mark by new { mark.QuestionId, mark.QuestionVersion, mark.Mark } into answers
                            select new { answers.Key.QuestionId, answers.Key.QuestionVersion, answers.Key.Mark, Count = answers.Count() }).ToListAsync(cancellation);
        return counts.Where(row => versions.GetValueOrDefault(row.QuestionId) == row.QuestionVersion).GroupBy(row => row.QuestionId, StringComparer.Ordinal)
            .ToDictionary(
                group => group.Key,
                group => (group.Sum(row => row.Count), group.Where(row => row.Mark == Mark.Right).Sum(row => row.Count)),
                StringComparer.Ordinal);
    }
}
