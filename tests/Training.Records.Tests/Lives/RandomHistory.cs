using Training.Certification;
using Training.Courses;

namespace Training.Records.Tests;

/// <summary>What was done to a certification, as it happened: all that the slow reading of a history looks at.</summary>
internal enum Deed
{
    Period,
    Suspension,
    Reinstatement,
    Withdrawal,
}

/// <summary>One thing that was done. Days are day numbers.</summary>
/// <param name="Deed">What.</param>
/// <param name="Number">Of the period, the suspension (its reinstatement has the same) or the period that a withdrawal names.</param>
/// <param name="Day">The first day on which it counts.</param>
/// <param name="KnownDay">The day on which it was written down.</param>
/// <param name="LastDay">Of a period.</param>
/// <param name="Window">Of a period.</param>
internal readonly record struct Act(Deed Deed, int Number, int Day, int KnownDay, int LastDay = 0, Duration Window = default);

/// <summary>A history that could lie in the records, with its days near the boundaries of the rules, and the rows that it makes there.</summary>
internal sealed class RandomHistory
{
    private static readonly DateOnly[] Starts =
        [new(2024, 2, 29), new(2024, 1, 31), new(2023, 12, 31), new(2024, 8, 31), new(2024, 2, 28), new(2025, 2, 28), new(2023, 11, 30), new(2023, 3, 31)];

    private static readonly Duration[] Validities = [Months(1), Months(2), Months(3), Months(6), Months(12), Years(1), Days(90)];
    private static readonly Duration[] Windows = [Days(0), Days(10), Months(1), Days(30), Months(2), Months(4)];
    private static readonly Duration[] Graces = [Days(0), Days(15), Months(1)];
    private static readonly string[] Zones = ["America/Phoenix", "America/New_York", "America/Los_Angeles"];

    private readonly RandomNumbers numbers;
    private readonly Guid lead;
    private readonly Guid otherLead;

    private RandomHistory(RandomNumbers numbers, string courseHash, Guid lead, Guid otherLead)
    {
        (this.numbers, this.lead, this.otherLead) = (numbers, lead, otherLead);
        MakePeriods(courseHash);
        MakeSuspensions();
        MakeWithdrawals();
        Acts = [.. Acts.OrderBy(act => act.Day).ThenBy(act => act.Deed).ThenBy(act => act.Number)];
    }

    public Guid PersonId { get; } = Guid.CreateVersion7();

    public List<Act> Acts { get; } = [];

    public List<PeriodRecord> Periods { get; } = [];

    public List<DecisionRecord> Decisions { get; } = [];

    public List<SuspensionRecord> Suspensions { get; } = [];

    public List<ReinstatementRecord> Reinstatements { get; } = [];

    public List<WithdrawalRecord> Withdrawals { get; } = [];

    /// <summary>Both sides of what may be a boundary, the boundary itself, and a day anywhere.</summary>
    public IEnumerable<DateOnly> DaysToAsk()
    {
        var act = Acts[numbers.Below(Acts.Count)];
        var edge = numbers.Below(5) switch
        {
            0 => act.LastDay == 0 ? act.KnownDay : act.LastDay,
            1 => act.KnownDay,
            2 when act.LastDay != 0 => SlowCalendar.Shift(DateOnly.FromDayNumber(act.LastDay), act.Window, -1).DayNumber,
            _ => act.Day,
        };
        yield return DateOnly.FromDayNumber(edge - 1);
        yield return DateOnly.FromDayNumber(edge);
        yield return DateOnly.FromDayNumber(edge + 1);

        var (first, last) = (Acts[0].Day - 2, Periods.Max(row => row.ExpiresOn).DayNumber + 40);
        yield return DateOnly.FromDayNumber(first + numbers.Below(last - first));
    }

    public static RandomHistory Make(RandomNumbers numbers, string courseHash, Guid lead, Guid otherLead) => new(numbers, courseHash, lead, otherLead);

    public override string ToString() => string.Join(
        '\n',
        Acts.Select(act => $"{DateOnly.FromDayNumber(act.Day):O} {act.Deed} {act.Number}, known {DateOnly.FromDayNumber(act.KnownDay):O}"
            + (act.LastDay == 0 ? "" : $", through {DateOnly.FromDayNumber(act.LastDay):O}, window {act.Window}")));

    private void MakePeriods(string courseHash)
    {
        var start = Chance(60) ? Of(Starts) : new DateOnly(2023, 6, 1).AddDays(numbers.Below(700));
        for (var count = 1 + numbers.Below(4); Periods.Count < count;)
        {
            var (validity, window, grace, zone) = (Of(Validities), Of(Windows), Of(Graces), Of(Zones));
            var last = Periods.Count == 0 ? null : Periods[^1];
            // An early renewal counts from the last day before; a late one, and a grant, from its own.
            var isEarly = last is not null && last.ExpiresOn > start && Chance(80);
            var expiresOn = SlowCalendar.Shift(isEarly ? last!.ExpiresOn : start, validity, 1); // not null: asked in the line above
            var (knownDay, keptAt) = Written(start, zone);
            var decision = new DecisionRecord
            {
                Id = Guid.CreateVersion7(), PersonId = PersonId, SchemeId = "handler", CourseHash = courseHash, Route = last is null ? Route.Grant : Route.Renewal,
                Outcome = DecisionOutcome.Granted, DecidedOn = start, Zone = zone, LeadId = lead, Reasons = "[]", KeptAt = keptAt,
            };
            Decisions.Add(decision);
            Periods.Add(new()
            {
                DecisionId = decision.Id, PersonId = PersonId, SchemeId = "handler", Number = Periods.Count + 1, DecidedOn = start, StartsOn = start,
                ExpiresOn = expiresOn, Validity = validity, Window = window, Grace = grace,
            });
            Acts.Add(new(Deed.Period, Periods.Count, start.DayNumber, knownDay, expiresOn.DayNumber, window));
            var next = Near(Edge(Periods[^1]));
            start = next > start ? next : start;
        }
    }

    private void MakeSuspensions()
    {
        for (var count = Of([0, 0, 0, 1, 1, 2, 3]); Suspensions.Count < count;)
        {
            var period = Of(Periods);
            var zone = Decisions[period.Number - 1].Zone;
            var from = Near(Edge(period));
            var (knownDay, keptAt) = Written(from, zone);
            var row = new SuspensionRecord
            {
                Id = Guid.CreateVersion7(), PersonId = PersonId, SchemeId = "handler", PeriodNumber = period.Number, Number = Suspensions.Count + 1,
                StartsOn = from, LeadId = lead, Reason = "asked for", DeadlineOn = from.AddDays(14), KeptAt = keptAt,
            };
            Suspensions.Add(row);
            Acts.Add(new(Deed.Suspension, row.Number, from.DayNumber, knownDay));
            if (!Chance(75)) continue;

            var on = from.AddDays(Of([0, 1, numbers.Below(60)]));
            var (endKnownDay, endKeptAt) = Written(on, zone);
            Reinstatements.Add(new() { SuspensionId = row.Id, ReinstatedOn = on, LeadId = lead, Reason = "settled", KeptAt = endKeptAt });
            Acts.Add(new(Deed.Reinstatement, row.Number, on.DayNumber, endKnownDay));
        }
    }

    private void MakeWithdrawals()
    {
        foreach (var period in Periods.Where(_ => Chance(20)))
        {
            var on = Near(Edge(period));
            var (knownDay, keptAt) = Written(on, Decisions[period.Number - 1].Zone);
            Withdrawals.Add(new()
            {
                Id = Guid.CreateVersion7(), PersonId = PersonId, SchemeId = "handler", PeriodNumber = period.Number, WithdrawnOn = on, LeadId = lead,
                ConfirmedById = otherLead, Reason = "asked for", KeptAt = keptAt,
            });
            Acts.Add(new(Deed.Withdrawal, period.Number, on.DayNumber, knownDay));
        }
    }

    /// <summary>Most rows are written on their day, some later, a few ahead of it; at the edges of that day or in its middle.</summary>
    private (int KnownDay, DateTimeOffset KeptAt) Written(DateOnly day, string zone)
    {
        var knownOn = day.AddDays(Of([0, 0, 0, 0, 0, 0, 1, numbers.Below(40), numbers.Below(40), -1]));
        var time = Of([new TimeOnly(0, 0), new TimeOnly(12, 30), new TimeOnly(23, 59, 59, 999)]);
        var local = knownOn.ToDateTime(time);
        return (knownOn.DayNumber, new DateTimeOffset(local, TimeZoneInfo.FindSystemTimeZoneById(zone).GetUtcOffset(local)));
    }

    private DateOnly Edge(PeriodRecord period) => numbers.Below(5) switch
    {
        0 => period.StartsOn,
        1 => SlowCalendar.Shift(period.ExpiresOn, period.Window, -1),
        2 => period.ExpiresOn,
        3 => SlowCalendar.Shift(period.ExpiresOn, period.Grace, 1),
        _ => period.StartsOn.AddDays(numbers.Below(period.ExpiresOn.DayNumber - period.StartsOn.DayNumber + 1)),
    };

    private DateOnly Near(DateOnly day) => day.AddDays(Of([0, 0, 0, 1, -1, 2, numbers.Below(60) - 30]));

    private bool Chance(int percent) => numbers.Below(100) < percent;

    private T Of<T>(IReadOnlyList<T> items) => items[numbers.Below(items.Count)];

    private static Duration Days(int count) => new(count, DurationUnit.Days);

    private static Duration Months(int count) => new(count, DurationUnit.Months);

    private static Duration Years(int count) => new(count, DurationUnit.Years);
}
