using CsCheck;

namespace Training.Certification.Tests.Appeals;

/// <summary>docs/rules.md, "Appeals".</summary>
public sealed class AppealsTests
{
    private static readonly Guid Lead = Cast.Lead;

    // The table of docs/rules.md.
    [Theory]
    [InlineData("2026-03-02", null, null, "2026-03-09", "2026-03-09", false)]
    [InlineData("2026-03-02", null, null, "2026-03-10", "2026-03-09", true)]
    [InlineData("2026-03-02", "2026-03-05", null, "2026-03-10", "2026-04-01", false)]
    [InlineData("2026-03-02", "2026-03-05", null, "2026-04-01", "2026-04-01", false)]
    [InlineData("2026-03-02", "2026-03-20", null, "2026-04-02", "2026-04-01", true)]
    [InlineData("2026-03-02", "2026-03-05", "2026-05-05", "2026-06-01", null, false)]
    [InlineData("2028-01-30", null, null, "2028-02-06", "2028-02-06", false)]
    public void It_is_taken_up_within_7_days_and_decided_within_30(
        string received, string? takenUp, string? decided, string today, string? nextBy, bool isOverdue)
    {
        var course = new AppealCourse(Cast.On(received), DayOrNull(takenUp), DayOrNull(decided));

        Assert.Equal(DayOrNull(nextBy), course.NextBy);
        Assert.Equal(isOverdue, course.IsOverdue(Cast.On(today)));
    }

    [Fact]
    public void Whoever_had_nothing_to_do_with_it_may_decide() =>
        Assert.Empty(AppealIndependence.BondsOf(File(taughtBy: Cast.Teacher, scoredBy: Cast.Scorer, decidedBy: Cast.Id(201)), Lead, Cast.On("2026-03-10")));

    [Fact]
    public void Every_hat_in_the_way_is_named()
    {
        var file = File(taughtBy: Lead, scoredBy: Lead, decidedBy: Lead) with { AppellantId = Lead };

        Assert.Equal(
            [
                new AppealBond.Appellant(), new AppealBond.Taught(Cast.On("2019-06-01")), new AppealBond.Scored(Cast.On("2026-03-01")),
                new AppealBond.Decided(),
            ],
            AppealIndependence.BondsOf(file, Lead, Cast.On("2026-03-10")));
    }

    [Fact]
    public void Unlike_for_a_scorer_no_two_years_set_a_teacher_free() =>
        Assert.Equal([new AppealBond.Taught(Cast.On("2019-06-01"))], AppealIndependence.BondsOf(File(taughtBy: Lead), Lead, Cast.On("2026-03-10")));

    [Theory]
    [InlineData("2026-02-28", 0)]
    [InlineData("2026-03-01", 1)]
    public void What_happens_later_does_not_bind(string on, int bonds) =>
        Assert.Equal(bonds, AppealIndependence.BondsOf(File(scoredBy: Lead), Lead, Cast.On(on)).Count);

    [Fact]
    public void The_latest_of_several_days_is_named_and_others_people_change_nothing() =>
        Gen.Int[0, 2000].Array[1, 8].Sample(days =>
        {
            var file = new AppealFile(
                Cast.Worker, [], [.. days.Select(day => (Lead, Cast.On("2020-01-01").AddDays(day))), (Cast.Scorer, Cast.On("2030-01-01"))], null);

            Assert.Equal([new AppealBond.Scored(Cast.On("2020-01-01").AddDays(days.Max()))], AppealIndependence.BondsOf(file, Lead, Cast.On("2031-01-01")));
        });

    [Theory]
    [InlineData(AppealMatter.Sitting, AppealOutcome.Upheld, AppealRemedy.SetAside, true)]
    [InlineData(AppealMatter.Scoresheet, AppealOutcome.UpheldInPart, AppealRemedy.SetAside, true)]
    [InlineData(AppealMatter.Scoresheet, AppealOutcome.Upheld, AppealRemedy.DecideAnew, false)]
    [InlineData(AppealMatter.Decision, AppealOutcome.Upheld, AppealRemedy.DecideAnew, true)]
    [InlineData(AppealMatter.Decision, AppealOutcome.Upheld, AppealRemedy.SetAside, false)]
    [InlineData(AppealMatter.Complaint, AppealOutcome.Upheld, AppealRemedy.ToldOnly, true)]
    [InlineData(AppealMatter.Complaint, AppealOutcome.Upheld, AppealRemedy.SetAside, false)]
    [InlineData(AppealMatter.Complaint, AppealOutcome.Upheld, null, false)]
    [InlineData(AppealMatter.Scoresheet, AppealOutcome.NotUpheld, null, true)]
    [InlineData(AppealMatter.Scoresheet, AppealOutcome.NotUpheld, AppealRemedy.ToldOnly, false)]
    public void What_follows_fits_what_was_contested(AppealMatter matter, AppealOutcome outcome, AppealRemedy? remedy, bool fits) =>
        Assert.Equal(fits, AppealRemedies.Fit(matter, outcome, remedy));

    private static AppealFile File(Guid? taughtBy = null, Guid? scoredBy = null, Guid? decidedBy = null) => new(
        Cast.Worker,
        taughtBy is { } teacher ? [new Teaching(Cast.Id(9), Cast.Worker, teacher, Cast.On("2019-06-01"))] : [],
        scoredBy is { } scorer ? [(scorer, Cast.On("2026-03-01"))] : [],
        decidedBy);

    private static DateOnly? DayOrNull(string? text) => text is null ? null : Cast.On(text);
}
