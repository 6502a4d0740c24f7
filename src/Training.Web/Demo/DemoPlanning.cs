using Training.Records;

namespace Training.Web.Demo;

/// <summary>What the demo's sites need, how far they lie apart, and when its instructors are free.</summary>
/// <param name="data">What is written down.</param>
/// <param name="ids">Of people, sites and crews, by row id.</param>
/// <param name="day">A day so many days ago.</param>
/// <param name="require">Refuses what the code refused.</param>
internal sealed class DemoPlanning(DemoData data, IReadOnlyDictionary<string, Guid> ids, Func<int, DateOnly> day, Action<string, Kept> require)
{
    /// <summary>Keeps all of it.</summary>
    public async Task KeepAsync(RecordsContext records, CancellationToken cancellation)
    {
        foreach (var row in data.CoverNeeds)
        {
            require(row.Site, await records.KeepAsync(
                new CoverNeed
                {
                    Id = Guid.CreateVersion7(), SiteId = ids[row.Site], CrewId = row.Crew.Length > 0 ? ids[$"{row.Site}/{row.Crew}"] : null, SchemeId = row.Scheme,
                    Handlers = row.Handlers, StartsOn = day(row.FromDaysAgo), SetById = ids[row.SaidBy], KeptAt = At(row.FromDaysAgo),
                },
                cancellation));
        }

        foreach (var row in data.InstructorDays)
        {
            require(row.Person, await records.KeepAsync(
                new InstructorDays
                {
                    Id = Guid.CreateVersion7(), InstructorId = ids[row.Person], StartsOn = day(row.FromDaysAgo), EndsOn = day(-row.ThroughDaysAhead),
                    Weekdays = row.Weekdays.Split(' ').Sum(name => 1 << (int)Enum.Parse<DayOfWeek>(name)), IsFree = row.What == "free", EnteredById = ids[row.EnteredBy],
                    KeptAt = At(row.EnteredDaysAgo),
                },
                cancellation));
        }

        foreach (var row in data.Travels)
        {
            require(row.Site, await records.KeepAsync(
                new SiteTravel
                {
                    Id = Guid.CreateVersion7(), SiteId = ids[row.Site], OtherSiteId = ids[row.Other], Minutes = row.Minutes, SetById = ids[row.SaidBy], KeptAt = At(row.SaidDaysAgo),
                },
                cancellation));
        }
    }

    private DateTimeOffset At(int daysAgo) => new(day(daysAgo), new TimeOnly(17, 0), TimeSpan.Zero);
}
