using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    private const int Histories = 150;

    // Short, so that days meet: every second history has something begin and end on one day.
    private const int Days = 45;

    /// <summary>The rule itself, on what is read back, is the judge of what the database says; fixed seeds, so that a failure comes again.</summary>
    [Theory, InlineData(1), InlineData(2), InlineData(3)]
    public async Task On_any_history_and_day_the_database_says_what_the_rule_says(int seed)
    {
        var cast = await Cast.CreateAsync(Database);
        var ids = await KeepHistoriesAsync(cast, new RandomNumbers((ulong)seed));
        await using var records = Database.Open();
        var held = await records.HeldCertificationsAsync(ids, Cancellation);
        var seen = new HashSet<Standing>();

        for (var offset = -1; offset <= Days; offset++)
        {
            var day = Cast.Today.AddDays(offset);
            var expected = held.Where(one => Standings.On(one, day) is not null)
                .Select(one => (one.PersonId, one.SchemeId, Standings.On(one, day)!.Value, Standings.FindPeriod(one, day)!)) // not null: it stands somehow
                .Select(one => (one.PersonId, one.SchemeId, one.Value, one.Item4.Number, one.Item4.ExpiresOn, one.Item4.GraceEndsOn)).ToHashSet();
            var rows = await records.StandingsOn(day).Where(row => ids.Contains(row.PersonId)).ToListAsync(Cancellation);

            Assert.Equal(rows.Count, expected.Count);
            Assert.All(rows, row => Assert.Contains((row.PersonId, row.SchemeId, row.Standing, row.Number, row.ExpiresOn, row.GraceEndsOn), expected));
            seen.UnionWith(rows.Select(row => row.Standing));
        }

        Assert.Equal(Enum.GetValues<Standing>().Length, seen.Count);
    }

    [Fact]
    public async Task Who_lapses_is_in_grace_and_stands_so_is_read_as_the_rules_have_it()
    {
        var cast = await Cast.CreateAsync(Database);
        var ids = await KeepHistoriesAsync(cast, new RandomNumbers(4));
        await using var records = Database.Open();
        var held = await records.HeldCertificationsAsync(ids, Cancellation);

        foreach (var offset in new[] { 3, 14, 30 })
        {
            var (day, by) = (Cast.Today.AddDays(offset), Cast.Today.AddDays(offset + 9));
            var lapsing = await records.LapsingAsync(cast.Employer, null, day, by, 10_000, Cancellation);
            var first = await records.LapsingAsync(cast.Employer, null, day, by, 3, Cancellation);
            var inGrace = await records.InGraceAsync(cast.Employer, null, day, 10_000, Cancellation);
            var lapsed = await records.LapsedSinceAsync(cast.Employer, null, day, day.AddDays(-5), 10_000, Cancellation);
            var counts = await records.StandingCountsAsync(cast.Employer, null, day, Cancellation);

            var expected = Lapses.By(held, day, by);
            Assert.Equal(expected.Select(lapse => (lapse.PersonId, lapse.SchemeId, lapse.ExpiresOn, lapse.Standing)).ToHashSet(),
                lapsing.Rows.Select(row => (row.PersonId, row.SchemeId, row.ExpiresOn, row.Standing)).ToHashSet());
            Assert.Equal(lapsing.Rows.OrderBy(row => row.ExpiresOn).Select(row => row.ExpiresOn), lapsing.Rows.Select(row => row.ExpiresOn));
            Assert.Equal((expected.Count, expected.DistinctBy(lapse => lapse.PersonId).Count()), (lapsing.Count, lapsing.People));
            Assert.Equal((lapsing.Count, lapsing.People), (first.Count, first.People));
            Assert.Equal(lapsing.Rows.Take(3), first.Rows);
            Assert.Equal(
                held.Where(one => Standings.On(one, day) == Standing.Lapsed && day <= Standings.FindPeriod(one, day)!.GraceEndsOn).Select(one => (one.PersonId, one.SchemeId)).ToHashSet(),
                inGrace.Rows.Select(row => (row.PersonId, row.SchemeId)).ToHashSet());
            Assert.Equal(
                held.Where(one => Standings.On(one, day) == Standing.Lapsed && day.AddDays(-5) <= Standings.ExpiresOn(one, day)).Select(one => (one.PersonId, one.SchemeId)).ToHashSet(),
                lapsed.Rows.Select(row => (row.PersonId, row.SchemeId)).ToHashSet());
            Assert.Equal(
                held.Where(one => Standings.On(one, day) is not null).Select(one => (one.PersonId, Standings.On(one, day)!.Value)).Distinct().CountBy(one => one.Value)
                    .Select(pair => $"{pair.Key}: {pair.Value}").Order(StringComparer.Ordinal),
                counts.Select(pair => $"{pair.Key}: {pair.Value}").Order(StringComparer.Ordinal));
        }
    }

    [Fact]
    public async Task People_are_chosen_and_sorted_by_how_they_stand()
    {
        var cast = await Cast.CreateAsync(Database);
        var ids = await KeepHistoriesAsync(cast, new RandomNumbers(5));
        await using var records = Database.Open();
        var held = (await records.HeldCertificationsAsync(ids, Cancellation)).ToDictionary(one => (one.PersonId, one.SchemeId));
        var day = Cast.Today.AddDays(20);
        string[][] choices = [[cast.CourseId], [Other(cast)], [cast.CourseId, Other(cast)]];

        foreach (var schemes in choices)
        {
            Standing? On(Guid person, string scheme) => held.TryGetValue((person, scheme), out var one) ? Standings.On(one, day) : null;
            foreach (var standing in Enum.GetValues<StandingChoice>())
            {
                var choice = new PeopleChoice { EmployerId = cast.Employer, Day = day, SchemeIds = schemes, Standing = standing };
                var expected = ids.Where(id => schemes.Any(scheme => On(id, scheme) == standing.ToStanding())).ToHashSet();

                Assert.Equal(expected, (await records.PeopleAsync(choice, 0, 1000, Cancellation)).Select(person => person.PersonId).ToHashSet());
                Assert.Equal(expected.Count, await records.CountAsync(choice, Cancellation));
            }

            var all = new PeopleChoice { EmployerId = cast.Employer, Day = day, SchemeIds = schemes };
            var worst = (await records.PeopleAsync(all with { Order = PeopleOrder.Standing }, 0, 1000, Cancellation)).Select(person => schemes.Min(scheme => Urgency(On(person.PersonId, scheme))));
            var lastDays = (await records.PeopleAsync(all with { Order = PeopleOrder.LastDay }, 0, 1000, Cancellation)).Select(person => schemes
                .Where(scheme => On(person.PersonId, scheme) is not (null or Standing.Withdrawn)).Select(scheme => Standings.ExpiresOn(held[(person.PersonId, scheme)], day)!.Value)
                .Where(expiresOn => expiresOn >= day).Append(DateOnly.MaxValue).Min());
            Assert.Equal(worst.Order(), worst);
            Assert.Equal(lastDays.Order(), lastDays);
            Assert.Equal(ids.Count, worst.Count());
        }
    }

    [Fact]
    public async Task Names_are_sorted_and_found_without_accents_and_an_erased_one_is_found_by_nobody()
    {
        var cast = await Cast.CreateAsync(Database);
        var names = new[] { "Zoë Quill", "íñigo Peña", "Álvaro Ruiz", "Inigo Penn", "50%_off" };
        await using var records = Database.Open();
        var ids = names.Select(_ => Guid.CreateVersion7()).ToList();
        records.AddRange(ids.Select(id => new Person { Id = id, Language = Language.English }));
        records.AddRange(ids.Zip(names, (id, name) => new PersonName { Id = Guid.CreateVersion7(), PersonId = id, Text = name, StartsOn = LongAgo }));
        records.AddRange(ids.Select(id => Employ(cast, cast.Employer, LongAgo, null, id)));
        records.AddRange(ids.Select((id, index) => new Badge { Id = Guid.CreateVersion7(), PersonId = id, EmployerId = cast.Employer, Number = $"b-{9 - index}", StartsOn = LongAgo }));
        await records.SaveChangesAsync(Cancellation);
        var choice = new PeopleChoice { EmployerId = cast.Employer, Day = Cast.Today };
        async Task<IEnumerable<string?>> NamesAsync(PeopleChoice asked) => (await records.PeopleAsync(asked, 0, 100, Cancellation)).Select(person => person.Name);

        Assert.Equal(["50%_off", "Álvaro Ruiz", "íñigo Peña", "Inigo Penn", "Zoë Quill"], await NamesAsync(choice));
        Assert.Equal(["íñigo Peña", "Inigo Penn"], await NamesAsync(choice with { Text = "ÍNIGO PEN" }));
        Assert.Equal(["50%_off"], await NamesAsync(choice with { Text = "%_" }));
        Assert.Equal(["íñigo Peña"], await NamesAsync(choice with { Text = "B-8" }));
        Assert.Equal(names.Reverse(), await NamesAsync(choice with { Order = PeopleOrder.Badge }));
        Assert.Equal(["Inigo Penn"], (await records.PeopleAsync(choice, 3, 1, Cancellation)).Select(person => person.Name));

        var row = await records.PersonNames.SingleAsync(name => name.PersonId == ids[0], Cancellation);
        row.Text = null;
        await records.SaveChangesAsync(Cancellation);

        Assert.Null(await records.PersonNames.Where(name => name.PersonId == ids[0]).Select(name => name.TextOrder).SingleAsync(Cancellation));
        Assert.Empty(await NamesAsync(choice with { Text = "zoe" }));
        Assert.Null((await NamesAsync(choice)).Last());
    }

    [Fact]
    public async Task Rows_from_before_their_columns_are_filled_before_the_server_serves()
    {
        var cast = await Cast.CreateAsync(Database);
        await cast.KeepGrantedAsync(Database);
        await using var records = Database.Open();
        var mine = records.Periods.Where(period => period.PersonId == cast.Worker);
        var names = records.PersonNames.Where(name => name.PersonId == cast.Worker);
        await mine.ExecuteUpdateAsync(row => row.SetProperty(period => period.WindowOpensOn, DateOnly.MinValue).SetProperty(period => period.GraceEndsOn, DateOnly.MinValue), Cancellation);
        await names.ExecuteUpdateAsync(row => row.SetProperty(name => name.TextOrder, (string?)null), Cancellation);

        await records.BringUpToDateAsync(Cast.Now, Cancellation);
        await records.BringUpToDateAsync(Cast.Now, Cancellation);

        var expiresOn = Cast.Today.AddYears(1);
        Assert.Equal(expiresOn.AddDays(-60), await mine.Select(period => period.WindowOpensOn).SingleAsync(Cancellation));
        Assert.Equal(expiresOn.AddDays(30), await mine.Select(period => period.GraceEndsOn).SingleAsync(Cancellation));
        Assert.Equal("INIGO PENA-RUIZ", await names.Select(name => name.TextOrder).SingleAsync(Cancellation));
    }

    private static string Other(Cast cast) => $"other-{cast.CourseId}";

    private static int Urgency(Standing? standing) => standing switch
    {
        Standing.Suspended => 0,
        Standing.Lapsed => 1,
        Standing.Withdrawn => 2,
        Standing.RenewalDue => 3,
        Standing.Current => 4,
        null => 5,
    };

    /// <summary>People of the employer with random periods, suspensions and withdrawals under two schemes, straight into the tables.</summary>
    private async Task<List<Guid>> KeepHistoriesAsync(Cast cast, RandomNumbers random)
    {
        await using var records = Database.Open();
        var ids = Enumerable.Range(0, Histories).Select(_ => Guid.CreateVersion7()).ToList();
        records.AddRange(ids.Select(id => new Person { Id = id, Language = Language.English }));
        records.AddRange(ids.Select(id => Employ(cast, cast.Employer, LongAgo, null, id)));
        records.AddRange(ids.SelectMany(id => new[] { cast.CourseId, Other(cast) }.Where(_ => random.Below(100) < 70).SelectMany(scheme => History(cast, id, scheme, random))));
        await records.SaveChangesAsync(Cancellation);
        return ids;
    }

    private static IEnumerable<object> History(Cast cast, Guid person, string scheme, RandomNumbers random)
    {
        DateOnly Day(int from) => Cast.Today.AddDays(random.Between(from, Days));
        Duration Some() => random.Below(4) == 0 ? new(random.Between(1, 3), DurationUnit.Months) : new(random.Between(0, 12), DurationUnit.Days);
        var starts = Enumerable.Range(0, random.Between(1, 4)).Select(_ => Day(0)).Order().ToList();
        foreach (var (index, start) in starts.Index())
        {
            var decision = Guid.CreateVersion7();
            yield return new DecisionRecord
            {
                Id = decision, PersonId = person, SchemeId = scheme, CourseHash = cast.CourseHash, Route = index == 0 ? Route.Grant : Route.Renewal,
                Outcome = DecisionOutcome.Granted, DecidedOn = start, Zone = Cast.Zone, LeadId = null, Reasons = "[]", KeptAt = Cast.Now,
            };
            yield return new PeriodRecord
            {
                DecisionId = decision, PersonId = person, SchemeId = scheme, Number = index + 1, DecidedOn = start, StartsOn = start,
                ExpiresOn = start.AddDays(random.Between(0, 20)), Validity = new(1, DurationUnit.Years), Window = Some(), Grace = Some(),
            };
        }

        foreach (var number in Enumerable.Range(1, random.Between(0, 4)))
        {
            var (id, from) = (Guid.CreateVersion7(), Day(0));
            yield return new SuspensionRecord
            {
                Id = id, PersonId = person, SchemeId = scheme, PeriodNumber = random.Between(1, starts.Count + 1), Number = number, StartsOn = from,
                LeadId = cast.Lead, Reason = "Reported from site.", DeadlineOn = from.AddDays(30), KeptAt = Cast.Now,
            };
            if (random.Below(2) == 0)
            {
                yield return new ReinstatementRecord
                {
                    SuspensionId = id, ReinstatedOn = from.AddDays(random.Between(0, 12)), LeadId = cast.OtherLead, Reason = "Assessed again.", KeptAt = Cast.Now,
                };
            }
        }

        foreach (var number in Enumerable.Range(1, starts.Count).Where(_ => random.Below(5) == 0))
        {
            yield return new WithdrawalRecord
            {
                Id = Guid.CreateVersion7(), PersonId = person, SchemeId = scheme, PeriodNumber = number, WithdrawnOn = Day(0), LeadId = cast.Lead,
                ConfirmedById = cast.OtherLead, Reason = "False scoresheet.", KeptAt = Cast.Now,
            };
        }
    }
}
