using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>Keeps the register of kit. Every row is kept once and never changed.</summary>
public static class KitKeeping
{
    /// <summary>Registers a piece. The same id again with the same label and kind is the same piece; a label that is taken is refused.</summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, KitPiece piece, CancellationToken cancellation)
    {
        if (await records.TryInsertAsync(cancellation, piece)) return new Kept.Stored(piece.Id);
        var there = await records.KitPieces.AsNoTracking().SingleOrDefaultAsync(other => other.Id == piece.Id, cancellation);
        if (there is null) return new Kept.Refused([RecordsProblems.At("Label", RecordsProblems.KitLabelTaken, piece.Label)]);
        return (there.LabelKey, there.Kind) == (piece.LabelKey, piece.Kind)
            ? new Kept.AlreadyStored(piece.Id)
            : new Kept.Refused([RecordsProblems.At("kit", RecordsProblems.OtherContent, piece.Id.ToString())]);
    }

    /// <summary>Keeps an inspection. The same id again with the same finding is the same inspection.</summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, KitInspectionRecord inspection, CancellationToken cancellation)
    {
        if (await records.TryInsertAsync(cancellation, inspection)) return new Kept.Stored(inspection.Id);
        var there = await records.KitInspections.AsNoTracking().SingleAsync(other => other.Id == inspection.Id, cancellation);
        return (there.PieceId, there.InspectorId, there.InspectedOn, there.IsFit, there.Reason, there.NextDueOn)
                == (inspection.PieceId, inspection.InspectorId, inspection.InspectedOn, inspection.IsFit, inspection.Reason, inspection.NextDueOn)
            ? new Kept.AlreadyStored(inspection.Id)
            : new Kept.Refused([RecordsProblems.At("kit", RecordsProblems.OtherContent, inspection.Id.ToString())]);
    }

    /// <summary>Takes a piece out of use. The first reason stays.</summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, KitRetirementRecord retirement, CancellationToken cancellation) =>
        await records.TryInsertAsync(cancellation, retirement) ? new Kept.Stored(retirement.PieceId) : new Kept.AlreadyStored(retirement.PieceId);
}
