using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Courses;

namespace Training.Records;

/// <summary>Keeps panels and what judges say.</summary>
public static class PanelKeeping
{
    /// <summary>Opens a panel.</summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, Panel panel, CancellationToken cancellation)
    {
        if (await records.TryInsertAsync(cancellation, panel)) return new Kept.Stored(panel.Id);
        var isSame = await records.Panels.AnyAsync(
            stored => stored.Id == panel.Id && stored.TargetId == panel.TargetId && stored.Purpose == panel.Purpose
                && stored.JustCompetent == panel.JustCompetent && stored.Balance == panel.Balance,
            cancellation);
        return isSame ? new Kept.AlreadyStored(panel.Id) : Reused();
    }

    /// <summary>Adds a judge under the next number; a person who judges already stays the judge that they are.</summary>
    /// <param name="records">Where to.</param>
    /// <param name="judge">Its number is ignored.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<Kept> KeepAsync(this RecordsContext records, PanelJudge judge, CancellationToken cancellation)
    {
        for (var attempt = 0; attempt < Bounds.Attempts; attempt++)
        {
            var judges = await records.PanelJudges.AsNoTracking().Where(other => other.PanelId == judge.PanelId).ToListAsync(cancellation);
            var known = judges.Find(other => other.Id == judge.Id || (judge.PersonId is not null && other.PersonId == judge.PersonId));
            if (known is not null)
            {
                var isSame = known.PersonId == judge.PersonId && known.OutsiderName == judge.OutsiderName;
                return isSame ? new Kept.AlreadyStored(known.Id) : Reused();
            }

            var numbered = new PanelJudge
            {
                Id = judge.Id, PanelId = judge.PanelId, Number = judges.Count + 1, PersonId = judge.PersonId, OutsiderName = judge.OutsiderName,
                Qualification = judge.Qualification, AddedById = judge.AddedById, AddedAt = judge.AddedAt,
            };
            if (await records.TryInsertAsync(cancellation, numbered)) return new Kept.Stored(judge.Id);
        }

        throw new InvalidOperationException($"Judges of panel {judge.PanelId} were added by others {Bounds.Attempts} times over.");
    }

    /// <summary>Keeps ratings of one form or file, all or none of them; what counts already makes no new row, also not in the second round.</summary>
    public static async Task<Kept> KeepAsync(
        this RecordsContext records, Guid panelId, IReadOnlyList<PanelRating> ratings, CancellationToken cancellation)
    {
        if (ratings.Count == 0) return new Kept.AlreadyStored(panelId);
        var file = await records.FindPanelAsync(panelId, cancellation) ?? throw new ArgumentException("No such panel.", nameof(panelId));
        var changed = ratings.Where(rating => file.Counting(rating.JudgeId, rating.Round).GetValueOrDefault(rating.ItemId, -1) != rating.Percent).ToList();
        if (changed.Count == 0) return new Kept.AlreadyStored(panelId);
        if (ratings.FirstOrDefault(rating => rating.Round != file.OpenRound) is { } late)
            return new Kept.Refused([new(PanelProblems.RoundClosed, new(), late.Round.ToString(CultureInfo.InvariantCulture))]);
        var formId = ratings[0].FormId;
        if (await records.PanelRatings.AnyAsync(rating => rating.FormId == formId, cancellation)) return Reused();
        return await records.TryInsertAsync(cancellation, [.. changed]) ? new Kept.Stored(panelId) : Reused();
    }

    /// <summary>Keeps what one judge would accept.</summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, PanelBounds bounds, CancellationToken cancellation)
    {
        if (await records.TryInsertAsync(cancellation, bounds)) return new Kept.Stored(bounds.Id);
        var stored = await records.PanelBounds.AsNoTracking().SingleAsync(row => row.Id == bounds.Id, cancellation);
        var isSame = (stored.JudgeId, stored.LeastCut, stored.GreatestCut, stored.LeastFail, stored.GreatestFail)
            == (bounds.JudgeId, bounds.LeastCut, bounds.GreatestCut, bounds.LeastFail, bounds.GreatestFail);
        return isSame ? new Kept.AlreadyStored(bounds.Id) : Reused();
    }

    /// <summary>Ends a round; a round that has ended stays ended when it was.</summary>
    public static async Task KeepAsync(this RecordsContext records, PanelRoundEnd end, CancellationToken cancellation) =>
        await records.TryInsertAsync(cancellation, end);

    /// <summary>Keeps an adoption.</summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, CutAdoption adoption, CancellationToken cancellation)
    {
        if (await records.TryInsertAsync(cancellation, adoption)) return new Kept.Stored(adoption.Id);
        var stored = await records.CutAdoptions.AsNoTracking().SingleAsync(row => row.Id == adoption.Id, cancellation);
        var isSame = (stored.PanelId, stored.Method, stored.Mean, stored.Reason) == (adoption.PanelId, adoption.Method, adoption.Mean, adoption.Reason);
        return isSame ? new Kept.AlreadyStored(adoption.Id) : Reused();
    }

    private static Kept.Refused Reused() => new([new Problem(PanelProblems.FormReused, new())]);
}
