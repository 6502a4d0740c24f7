using CsCheck;
using Training.Courses;

namespace Training.Scoring.Tests;

public sealed class KitStateTests
{
    private static readonly DateOnly Inspected = new(2026, 3, 2);
    private static readonly DateOnly Due = new(2026, 8, 31);
    private static readonly KitInspection Fit = new(Guid.Parse("0195f000-0000-7000-8000-000000000010"), Inspected, IsFit: true, null, Due);

    public static TheoryData<DateOnly, string> Days => new()
    {
        { new(2026, 3, 1), "NeverInspected" },   // what is dated after the day does not exist yet
        { new(2026, 3, 2), "Usable" },           // the day of the inspection counts
        { new(2026, 8, 31), "Usable" },          // the last day through which it holds
        { new(2026, 9, 1), "Overdue" },
    };

    [Theory, MemberData(nameof(Days))]
    public void An_inspection_holds_from_its_day_through_the_day_it_names(DateOnly day, string state) =>
        Assert.Equal(state, KitState.On([Fit], null, day).GetType().Name);

    [Fact]
    public void The_last_inspection_counts_and_of_two_on_one_day_the_later()
    {
        var bent = new KitInspection(Guid.CreateVersion7(), Inspected, IsFit: false, "Bent.", null);
        var mended = Fit with { On = Inspected.AddDays(1), NextDueOn = Due };

        Assert.Equal(new KitState.NotFit(Inspected, "Bent."), KitState.On([Fit, bent], null, Inspected));
        Assert.Equal(new KitState.Usable(Fit.Id, Due), KitState.On([bent, Fit], null, Inspected));
        Assert.Equal(new KitState.Usable(mended.Id, Due), KitState.On([mended, bent], null, Due)); // kept first, dated last
    }

    [Fact]
    public void A_piece_out_of_use_stays_so_from_its_day_on_whatever_was_found_since()
    {
        var gone = new KitRetirement(new(2026, 5, 1), "Jaw broken.");

        Assert.IsType<KitState.Usable>(KitState.On([Fit], gone, new(2026, 4, 30)));
        Assert.Equal(new KitState.OutOfUse(new(2026, 5, 1), "Jaw broken."), KitState.On([Fit, Fit with { On = new(2026, 5, 2) }], gone, new(2026, 5, 3)));
    }

    [Fact]
    public void Every_piece_that_may_not_be_used_is_told_and_none_of_them_is_taken()
    {
        KitOnDay[] register =
        [
            new(Guid.CreateVersion7(), "H-1", KitKind.Hook, new KitState.Usable(Fit.Id, Due)),
            new(Guid.CreateVersion7(), "H-2", KitKind.Hook, new KitState.NeverInspected()),
            new(Guid.CreateVersion7(), "H-3", KitKind.Hook, new KitState.NotFit(Inspected, "Bent.")),
            new(Guid.CreateVersion7(), "H-4", KitKind.Hook, new KitState.Overdue(Due)),
            new(Guid.CreateVersion7(), "H-5", KitKind.Hook, new KitState.OutOfUse(Due, "Lost.")),
        ];
        var problems = new List<Problem>();

        var used = KitOnDay.Choose(register, [Guid.Empty, .. register.Select(piece => piece.Id)], problems);

        Assert.Equal([new UsedKit(register[0].Id, Fit.Id)], used);
        Assert.Equal(["kit.unknown", "kit.never-inspected", "kit.not-fit", "kit.overdue", "kit.out-of-use"], problems.Select(problem => problem.Code));
        Assert.Equal(["H-4", "2026-08-31"], problems[3].Arguments);
    }

    [Fact]
    public void A_piece_is_usable_only_by_a_fit_inspection_on_or_before_the_day_that_holds_through_it()
    {
        var inspection = Gen.Select(Gen.Int[0, 60], Gen.Bool, Gen.Int[1, 40], (on, isFit, holds) => new KitInspection(
            Guid.CreateVersion7(), Inspected.AddDays(on), isFit, isFit ? null : "Bent.", isFit ? Inspected.AddDays(on + holds) : null));

        Gen.Select(inspection.Array[0, 5], Gen.Int[-5, 120]).Sample((inspections, after) =>
        {
            var day = Inspected.AddDays(after);
            var state = KitState.On(inspections, null, day);
            var seen = inspections.Where(found => found.On <= day).ToList();
            var last = seen.FindLast(found => seen.TrueForAll(other => other.On <= found.On));
            Assert.Equal(last is { IsFit: true } && last.NextDueOn >= day, state is KitState.Usable);
            if (state is KitState.Usable usable) Assert.Equal(last!.Id, usable.InspectionId); // not null: it is usable
        });
    }
}
