using Microsoft.EntityFrameworkCore;
using Training.Scoring;

namespace Training.Records;

/// <summary>A piece of kit with everything that was found about it.</summary>
/// <param name="Piece">Which.</param>
/// <param name="Inspections">In the order in which they were kept.</param>
/// <param name="Retirement">Or null while it is in use.</param>
public sealed record RegisteredKit(KitPiece Piece, IReadOnlyList<KitInspectionRecord> Inspections, KitRetirementRecord? Retirement)
{
    /// <summary>As it stands on a day.</summary>
    public KitOnDay On(DateOnly day) => new(Piece.Id, Piece.Label, Piece.Kind, KitState.On(
        [.. Inspections.Select(row => new KitInspection(row.Id, row.InspectedOn, row.IsFit, row.Reason, row.NextDueOn))],
        Retirement is { } gone ? new(gone.RetiredOn, gone.Reason) : null, day));
}

/// <summary>Reads the register of kit.</summary>
public static class KitQueries
{
    private const int MostPieces = 1000;
    private const int MostInspections = 20_000;

    /// <summary>Every piece, by label.</summary>
    public static Task<IReadOnlyList<RegisteredKit>> KitAsync(this RecordsContext records, CancellationToken cancellation) =>
        records.KitAsync(records.KitPieces, cancellation);

    /// <summary>One piece, or null.</summary>
    public static async Task<RegisteredKit?> FindKitAsync(this RecordsContext records, Guid pieceId, CancellationToken cancellation) =>
        await records.KitAsync(records.KitPieces.Where(piece => piece.Id == pieceId), cancellation) is [var only] ? only : null;

    private static async Task<IReadOnlyList<RegisteredKit>> KitAsync(
        this RecordsContext records, IQueryable<KitPiece> pieces, CancellationToken cancellation)
    {
        var rows = await pieces.AsNoTracking().OrderBy(piece => piece.LabelKey).Take(MostPieces).ToListAsync(cancellation);
        var ids = pieces.Select(piece => piece.Id);
        // Newest first under the bound, so that what counts is never cut off.
        var inspections = await records.KitInspections.AsNoTracking().Where(row => ids.Contains(row.PieceId))
            .OrderByDescending(row => row.KeptAt).ThenByDescending(row => row.Id).Take(MostInspections).ToListAsync(cancellation);
        var retirements = await records.KitRetirements.AsNoTracking().Where(row => ids.Contains(row.PieceId))
            .ToDictionaryAsync(row => row.PieceId, cancellation);
        var inspectionsOf = inspections.AsEnumerable().Reverse().ToLookup(row => row.PieceId);
        return rows.ConvertAll(piece => new RegisteredKit(piece, [.. inspectionsOf[piece.Id]], retirements.GetValueOrDefault(piece.Id)));
    }
}
