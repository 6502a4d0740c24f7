using Training.Scoring;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    [Fact]
    public async Task A_piece_reads_back_with_its_inspections_in_the_order_they_were_kept()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var bent = cast.Inspection(Guid.CreateVersion7(), daysAgo: 1, unfit: "Bent.");

        Assert.IsType<Kept.Stored>(await records.KeepAsync(bent, Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.KeepAsync(cast.Inspection(bent.Id, daysAgo: 1, unfit: "Bent."), Cancellation));
        Assert.Equal([RecordsProblems.OtherContent], Codes(await records.KeepAsync(cast.Inspection(bent.Id, daysAgo: 1), Cancellation)));

        var kit = (await records.FindKitAsync(cast.Hook, Cancellation))!;
        Assert.Equal([cast.HookInspection, bent.Id], kit.Inspections.Select(row => row.Id));
        Assert.Equal(new KitState.Usable(cast.HookInspection, Cast.Today.AddDays(140)), kit.On(Cast.Today.AddDays(-2)).State);
        Assert.Equal(new KitState.NotFit(Cast.Today.AddDays(-1), "Bent."), kit.On(Cast.Today).State);
        Assert.Contains(await records.KitAsync(Cancellation), other => other.Piece.Id == cast.Hook && other.Inspections.Count == 2);
    }

    [Fact]
    public async Task A_label_names_one_piece_whatever_its_case()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        KitPiece Piece(Guid id, string label) => new() { Id = id, Label = label, Kind = KitKind.Tongs, RegisteredById = cast.Lead, RegisteredAt = Cast.Now };
        var (id, label) = (Guid.CreateVersion7(), $"t-{Guid.CreateVersion7()}");

        Assert.IsType<Kept.Stored>(await records.KeepAsync(Piece(id, label), Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.KeepAsync(Piece(id, label), Cancellation));
        Assert.Equal([RecordsProblems.KitLabelTaken], Codes(await records.KeepAsync(Piece(Guid.CreateVersion7(), label.ToUpperInvariant()), Cancellation)));
    }

    [Fact]
    public async Task The_first_reason_for_taking_a_piece_out_of_use_stays()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        KitRetirementRecord Gone(string reason) => new() { PieceId = cast.Hook, TakenById = cast.Lead, RetiredOn = Cast.Today, Reason = reason, KeptAt = Cast.Now };

        Assert.IsType<Kept.Stored>(await records.KeepAsync(Gone("Cracked."), Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.KeepAsync(Gone("Lost."), Cancellation));

        Assert.Equal(new KitState.OutOfUse(Cast.Today, "Cracked."), (await records.FindKitAsync(cast.Hook, Cancellation))!.On(Cast.Today).State);
    }

    [Fact]
    public async Task A_signed_sheet_keeps_its_pieces_and_the_inspections_that_held()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var sheet = cast.Sheet();

        Assert.IsType<Kept.Stored>(await records.KeepAsync(sheet, Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation));

        var stored = (await records.FindScoresheetAsync(sheet.Id, Cancellation))!.Sheet;
        Assert.Equal([new UsedKit(cast.Hook, cast.HookInspection)], stored.Conditions.Pieces);
        Assert.Equal((Impression.Ready, sheet.InstructionsReadAt), (stored.Impression, stored.InstructionsReadAt));
    }
}
