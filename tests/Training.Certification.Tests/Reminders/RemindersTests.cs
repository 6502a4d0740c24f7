using CsCheck;
using Training.Courses;
using static Training.Certification.Tests.Cast;

namespace Training.Certification.Tests;

public sealed class RemindersTests
{
    private static readonly Duration[] Remind = [D("P90D"), D("P60D"), D("P30D"), D("P7D")];
    private static readonly HeldCertification ThroughMay = Held(Period(1, "2025-05-31", "2026-05-31"));

    /// <summary>The table of docs/rules.md, "Reminders".</summary>
    public static TheoryData<string, string?> Day_and_what_stands => new()
    {
        { "2026-03-01", null },
        { "2026-03-02", "P90D" },
        { "2026-03-31", "P90D" },
        { "2026-04-01", "P60D" },
        { "2026-05-23", "P30D" },
        { "2026-05-24", "P7D" },
        { "2026-05-31", "P7D" },
        { "2026-06-01", "after" },
        { "2026-06-30", "after" },
        { "2026-07-01", null },
    };

    [Theory, MemberData(nameof(Day_and_what_stands))]
    public void On_a_day_the_latest_milestone_that_has_come_stands(string day, string? stands) =>
        Assert.Equal(stands, Reminders.On(ThroughMay, Remind, On(day))?.Milestone.ToString());

    [Fact]
    public void A_reminder_says_of_which_period_it_is_and_on_which_day_it_fell_due() =>
        Assert.Equal(
            new Reminder(Worker, Handler, 1, new(D("P60D")), On("2026-04-01"), On("2026-05-31")),
            Reminders.On(ThroughMay, Remind, On("2026-04-20")));

    [Fact]
    public void The_order_in_which_a_scheme_names_its_milestones_does_not_matter() =>
        Assert.Equal(Reminders.On(ThroughMay, Remind, On("2026-05-01")), Reminders.On(ThroughMay, [.. Remind.Reverse()], On("2026-05-01")));

    [Fact]
    public void Months_are_counted_back_from_the_last_day() =>
        Assert.Equal(On("2026-02-28"), Reminders.On(ThroughMay, [D("P3M")], On("2026-04-20"))?.DueOn);

    [Theory]
    [InlineData("2026-04-02", null)]         // 90 and 60 days before fall before its first day
    [InlineData("2026-05-01", "P30D")]
    public void A_milestone_before_the_first_day_of_a_short_period_is_none(string day, string? stands) =>
        Assert.Equal(stands, Reminders.On(Held(Period(1, "2026-04-01", "2026-05-31")), Remind, On(day))?.Milestone.ToString());

    [Fact]
    public void Of_two_milestones_on_one_day_one_is_left() =>
        Assert.Single(Reminders.Ahead(ThroughMay, [D("P31D"), D("P1M"), D("P31D")], On("2026-03-01"), On("2026-05-31")));

    [Fact]
    public void Nobody_is_reminded_while_suspended_and_the_latest_stands_again_afterwards()
    {
        var held = ThroughMay.Suspended("2026-04-10", "2026-05-05");

        Assert.Null(Reminders.On(held, Remind, On("2026-05-05")));
        Assert.Equal("P30D", Reminders.On(held, Remind, On("2026-05-06"))?.Milestone.ToString());
    }

    [Fact]
    public void Nobody_is_reminded_of_what_is_withdrawn() =>
        Assert.Null(Reminders.On(ThroughMay.Withdrawn("2026-04-10"), Remind, On("2026-04-10")));

    [Fact]
    public void Once_renewed_the_new_period_counts()
    {
        var renewed = Held(Period(1, "2025-05-31", "2026-05-31"), Period(2, "2026-05-10", "2027-05-31"));

        Assert.Null(Reminders.On(renewed, Remind, On("2026-06-01")));
        Assert.Equal(2, Reminders.On(renewed, Remind, On("2027-05-30"))?.PeriodNumber);
    }

    [Fact]
    public void Ahead_lists_what_falls_due_after_a_day_through_another() =>
        Assert.Equal(
            ["P30D 2026-05-01", "P7D 2026-05-24", "after 2026-06-01"],
            Reminders.Ahead(ThroughMay, Remind, On("2026-04-01"), On("2026-06-01")).Select(next => $"{next.Milestone} {next.DueOn:yyyy-MM-dd}"));

    [Fact]
    public void The_spans_in_which_milestones_stand_follow_each_other() =>
        Assert.Equal(
            ["after 2026-03-02 2026-03-31", "P7D 2026-04-01 2026-04-08", "P30D 2026-04-09 2026-05-01", "P60D 2026-05-02 2026-05-31", "P90D 2026-06-01 2026-06-30"],
            Reminders.StandingSpans(Remind, On("2026-04-01")).Select(span => $"{span.Milestone} {span.From:yyyy-MM-dd} {span.Through:yyyy-MM-dd}"));

    private static readonly Gen<Duration[]> AnyMilestones =
        Gen.Select(Gen.Int[1, 100], Gen.Enum<DurationUnit>(), (count, unit) => new Duration(unit == DurationUnit.Days ? count : 1 + (count % 4), unit)).Array[0, 5];

    /// <summary>Whoever looks only into the spans misses nobody, months that clamp included.</summary>
    [Fact]
    public void Every_reminder_that_stands_lies_in_the_span_of_its_milestone_and_nothing_else_lies_in_one() =>
        Gen.Select(Gen.Int[0, 1500], Gen.Int[-40, 1500], AnyMilestones).Sample((shift, ahead, remind) =>
        {
            var day = On("2024-01-01").AddDays(shift);
            var expiresOn = day.AddDays(ahead);
            var held = Held(new Period(1, expiresOn.AddYears(-20), expiresOn.AddYears(-20), expiresOn, Annual));
            var spans = Reminders.StandingSpans(remind, day).Where(span => span.From <= expiresOn && expiresOn <= span.Through).ToList();

            return spans.Count <= 1 && Reminders.On(held, remind, day)?.Milestone == spans.SingleOrDefault()?.Milestone;
        });

    [Fact]
    public void Every_reminder_ahead_lies_in_a_span_and_nothing_else_lies_in_one() =>
        Gen.Select(Gen.Int[0, 1500], Gen.Int[-40, 1500], Gen.Int[0, 40], AnyMilestones).Sample((shift, ahead, length, remind) =>
        {
            var day = On("2024-01-01").AddDays(shift);
            var (expiresOn, through) = (day.AddDays(ahead), day.AddDays(length));
            var held = Held(new Period(1, expiresOn.AddYears(-20), expiresOn.AddYears(-20), expiresOn, Annual));
            var spans = Reminders.ComingSpans(remind, day, through).Where(span => span.From <= expiresOn && expiresOn <= span.Through).ToList();

            var coming = Reminders.Ahead(held, remind, day, through);
            return spans.Count <= 1 && (coming.Count == 0 ? null : coming[0].Milestone) == spans.SingleOrDefault()?.Milestone;
        });

    /// <summary>A programme that looks on some days only: whatever the days, nothing goes out twice, late ones are passed over, and the last word is said.</summary>
    [Fact]
    public void Whoever_looks_on_any_days_sends_each_once_and_only_the_latest() =>
        Gen.Select(Gen.Int[0, 1000], Gen.Int[1, 120].Array[1, 6], Gen.Bool.Array[460]).Sample((shift, daysBefore, looks) =>
        {
            var start = On("2024-01-01").AddDays(shift);
            var expiresOn = start.AddDays(400);
            var held = Held(new Period(1, start, start, expiresOn, Annual));
            Duration[] remind = [.. daysBefore.Select(days => new Duration(days, DurationUnit.Days))];
            var sent = new HashSet<Reminder>();
            int[] milestones = [.. daysBefore.Distinct().Select(days => 400 - days), 401];

            foreach (var offset in Enumerable.Range(0, looks.Length).Where(day => looks[day]))
            {
                var due = Reminders.On(held, remind, start.AddDays(offset));
                // The second implementation: counted in whole days from the first.
                int? latest = offset > 430 ? null : milestones.Where(milestone => milestone <= offset).Select(milestone => (int?)milestone).Max();
                if (due?.DueOn.DayNumber - start.DayNumber != latest) return false;
                if (due is not null) sent.Add(due);
            }

            return sent.Count <= milestones.Length && sent.Select(reminder => reminder.DueOn).Distinct().Count() == sent.Count;
        });
}
