using Microsoft.EntityFrameworkCore;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    private static readonly DateOnly Ahead = Cast.Today.AddDays(9);

    private static async Task<ClassRecord> ClassAheadAsync(RecordsContext records, Cast cast, int seats, DateOnly? on = null)
    {
        var day = new ClassRecord { Id = Guid.CreateVersion7(), SiteId = cast.Site, HeldOn = on ?? Ahead, CourseId = cast.CourseId, Capacity = seats };
        Assert.IsType<Kept.Stored>(await records.KeepAsync(day, Cancellation));
        return day;
    }

    private static async Task<List<Guid>> PeopleAsync(RecordsContext records, int count)
    {
        var people = Enumerable.Range(0, count).Select(_ => Guid.CreateVersion7()).ToList();
        records.AddRange(people.Select(id => new Person { Id = id, Language = Courses.Language.English }));
        await records.SaveChangesAsync(Cancellation);
        records.ChangeTracker.Clear();
        return people;
    }

    private static Task<Kept> BackAsync(RecordsContext records, Guid day, Guid person, Guid? id = null, string? reason = null, DateTimeOffset? now = null) =>
        records.GiveBackAsync(id ?? Guid.CreateVersion7(), day, person, person, reason, now ?? Cast.Now, Cancellation);

    private static Task<Kept> WaitsAsync(RecordsContext records, Guid day, Guid person, int minute = 0) =>
        records.WaitAsync(Guid.CreateVersion7(), day, person, person, Cast.Now.AddMinutes(minute), Cancellation);

    private static Task<List<Guid>> SeatedAsync(RecordsContext records, Guid day) =>
        records.SeatsHeld().Where(seat => seat.ClassId == day).OrderBy(seat => seat.PersonId).Select(seat => seat.PersonId).ToListAsync(Cancellation);

    [Fact]
    public async Task A_seat_that_was_given_back_is_free_and_stays_on_record()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var day = await ClassAheadAsync(records, cast, 1);
        await records.AttendAsync(day.Id, cast.Worker, Cancellation);
        var form = Guid.CreateVersion7();

        Assert.IsType<Kept.Stored>(await BackAsync(records, day.Id, cast.Worker, form, "on leave"));
        Assert.IsType<Kept.AlreadyStored>(await BackAsync(records, day.Id, cast.Worker, form, "on leave"));
        Assert.Equal([RecordsProblems.OtherContent], Codes(await BackAsync(records, day.Id, cast.Worker, form, "something else")));
        Assert.Equal([RecordsProblems.NoSeat], Codes(await BackAsync(records, day.Id, cast.Worker)));

        Assert.Empty(await SeatedAsync(records, day.Id));
        Assert.Equal(1, Assert.Single(await records.ClassesAheadAsync(cast.Employer, Ahead, Cancellation)).FreeSeats);
        Assert.Empty(await records.SeatsAheadAsync([cast.Worker], Ahead, Cancellation));
        Assert.IsType<Kept.Stored>(await records.AttendAsync(day.Id, cast.Worker, Cancellation));
        Assert.Equal([1, 2], await records.ClassAttendances.Where(row => row.ClassId == day.Id).OrderBy(row => row.Turn).Select(row => row.Turn).ToListAsync(Cancellation));
        Assert.Equal([cast.Worker], await SeatedAsync(records, day.Id));
    }

    [Fact]
    public async Task A_seat_can_be_given_back_through_the_day_of_the_class()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var day = await ClassAheadAsync(records, cast, 2);
        var other = (await PeopleAsync(records, 1))[0];
        await records.AttendAsync(day.Id, cast.Worker, Cancellation);
        await records.AttendAsync(day.Id, other, Cancellation);

        // 23:59 of the day in Phoenix, and a minute later.
        var lastMinute = new DateTimeOffset(Ahead.AddDays(1), new(6, 59), TimeSpan.Zero);
        Assert.IsType<Kept.Stored>(await BackAsync(records, day.Id, cast.Worker, now: lastMinute));
        Assert.Equal([RecordsProblems.ClassOver], Codes(await BackAsync(records, day.Id, other, now: lastMinute.AddMinutes(1))));
    }

    [Fact]
    public async Task Who_was_scored_was_there_and_gives_no_seat_back()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        await records.KeepAsync(cast.Sheet(), Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        Assert.Equal([RecordsProblems.SeatScored], Codes(await BackAsync(records, cast.Class, cast.Worker)));
        Assert.Equal([RecordsProblems.SeatScored], Codes(await records.MarkAsync(
            Guid.CreateVersion7(), cast.Class, cast.Worker, Presence.DidNotCome, null, cast.Instructor, Cast.Now, Cancellation)));
        Assert.Equal([RecordsProblems.ClassScored], Codes(await records.CancelAsync(
            new() { ClassId = cast.Class, CancelledAt = Cast.Now, CancelledById = cast.Lead, Reason = "storm" }, Cancellation)));
        Assert.Equal([RecordsProblems.ClassScored], Codes(await records.ChangeAsync(
            Guid.CreateVersion7(), cast.Class, new(Ahead, new(8, 0), 480, 8), cast.Lead, "storm", Cast.Now, Cancellation)));
        Assert.IsType<Kept.Stored>(await records.ChangeAsync(
            Guid.CreateVersion7(), cast.Class, new(Cast.Today, new(8, 0), 480, 9), cast.Lead, "a larger yard", Cast.Now, Cancellation));
    }

    /// <summary>The table of docs/rules.md, "Class days".</summary>
    [Theory]
    [InlineData(1, false, -1, true, false)]
    [InlineData(2, false, -1, true, true)]
    [InlineData(1, false, 0, false, false)]
    [InlineData(1, true, -1, false, true)]
    public async Task The_first_in_line_gets_the_seat_that_comes_free(int freed, bool isFirstTakenOff, int daysBefore, bool isFirstSeated, bool isSecondSeated)
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var day = await ClassAheadAsync(records, cast, 2);
        var people = await PeopleAsync(records, 4);
        await records.AttendAsync(day.Id, people[0], Cancellation);
        await records.AttendAsync(day.Id, people[1], Cancellation);
        Assert.IsType<Kept.Stored>(await WaitsAsync(records, day.Id, people[2]));
        Assert.IsType<Kept.Stored>(await WaitsAsync(records, day.Id, people[3], minute: 5));
        if (isFirstTakenOff) await records.StopWaitingAsync(day.Id, people[2], people[2], Cast.Now, Cancellation);

        foreach (var person in people.Take(freed)) await BackAsync(records, day.Id, person, now: Cast.Now.AddDays(9 + daysBefore));

        var seated = await SeatedAsync(records, day.Id);
        Assert.Equal((isFirstSeated, isSecondSeated), (seated.Contains(people[2]), seated.Contains(people[3])));
        var waiting = await records.Waiting(day.Id).Select(row => row.PersonId).ToListAsync(Cancellation);
        Assert.Equal((!isFirstSeated && !isFirstTakenOff, !isSecondSeated), (waiting.Contains(people[2]), waiting.Contains(people[3])));
    }

    [Fact]
    public async Task Nobody_waits_for_a_free_seat_or_twice_or_for_a_seat_they_have()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var day = await ClassAheadAsync(records, cast, 1);
        var other = (await PeopleAsync(records, 1))[0];

        Assert.Equal([RecordsProblems.SeatFree], Codes(await WaitsAsync(records, day.Id, cast.Worker)));
        await records.AttendAsync(day.Id, cast.Worker, Cancellation);
        Assert.Equal([RecordsProblems.SeatedAlready], Codes(await WaitsAsync(records, day.Id, cast.Worker)));
        Assert.IsType<Kept.Stored>(await WaitsAsync(records, day.Id, other));
        Assert.IsType<Kept.AlreadyStored>(await WaitsAsync(records, day.Id, other));
        Assert.Equal([RecordsProblems.ClassUnknown], Codes(await WaitsAsync(records, Guid.CreateVersion7(), other)));
        await BackAsync(records, day.Id, cast.Worker);
        await BackAsync(records, day.Id, other);
        Assert.IsType<Kept.Stored>(await records.AttendAsync(day.Id, cast.Worker, Cancellation));
        Assert.IsType<Kept.Stored>(await WaitsAsync(records, day.Id, other));     // after an end they may wait again
    }

    [Fact]
    public async Task However_many_give_back_and_wait_at_once_nobody_sits_twice_and_no_seat_too_many_is_given()
    {
        var cast = await Cast.CreateAsync(Database);
        List<Guid> people;
        ClassRecord day;
        await using (var records = Database.Open())
        {
            day = await ClassAheadAsync(records, cast, 3);
            people = await PeopleAsync(records, 9);
            foreach (var person in people.Take(3)) await records.AttendAsync(day.Id, person, Cancellation);
            foreach (var (minute, person) in people.Skip(3).Index()) await WaitsAsync(records, day.Id, person, minute);
        }

        await Task.WhenAll(people.Take(3).Select(person => Task.Run(async () =>
        {
            await using var own = Database.Open();
            return await BackAsync(own, day.Id, person);
        })));

        await using var read = Database.Open();
        Assert.Equal([.. people.Skip(3).Take(3).Order()], (await SeatedAsync(read, day.Id)).Order());
    }

    [Fact]
    public async Task More_seats_go_to_who_waits_and_fewer_than_are_taken_are_refused()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var day = await ClassAheadAsync(records, cast, 1);
        var other = (await PeopleAsync(records, 1))[0];
        await records.AttendAsync(day.Id, cast.Worker, Cancellation);
        await WaitsAsync(records, day.Id, other);
        var (form, plan) = (Guid.CreateVersion7(), new ClassPlan(Ahead, new(8, 0), 480, 2));

        Assert.IsType<Kept.Stored>(await records.ChangeAsync(form, day.Id, plan, cast.Lead, "a second hook", Cast.Now, Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.ChangeAsync(form, day.Id, plan, cast.Lead, "a second hook", Cast.Now, Cancellation));
        Assert.Equal([RecordsProblems.OtherContent], Codes(await records.ChangeAsync(form, day.Id, plan with { Seats = 3 }, cast.Lead, "a second hook", Cast.Now, Cancellation)));

        Assert.Contains(other, await SeatedAsync(records, day.Id));
        Assert.Equal([RecordsProblems.SeatsTaken], Codes(await records.ChangeAsync(
            Guid.CreateVersion7(), day.Id, plan with { Seats = 1 }, cast.Lead, "a smaller yard", Cast.Now, Cancellation)));
        var row = Assert.Single(await records.ClassChanges.Where(change => change.ClassId == day.Id).ToListAsync(Cancellation));
        Assert.Equal((1, 1, 2, cast.Lead, "a second hook"), (row.Number, row.FromSeats, row.ToSeats, row.ChangedById, row.Reason));
    }

    [Fact]
    public async Task A_class_moves_to_a_day_on_which_its_instructors_may()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var day = await ClassAheadAsync(records, cast, 4);
        await records.TeachAsync(day.Id, cast.Instructor, Cancellation);

        Task<Kept> Move(DateOnly to) => records.ChangeAsync(Guid.CreateVersion7(), day.Id, new(to, new(9, 30), 240, 4), cast.Lead, "heat", Cast.Now, Cancellation);

        Assert.IsType<Kept.Stored>(await Move(Ahead.AddDays(1)));
        Assert.Equal([RecordsProblems.NothingChanges], Codes(await Move(Ahead.AddDays(1))));
        Assert.Equal([RecordsProblems.DayOver], Codes(await Move(Cast.Today.AddDays(-1))));
        Assert.Equal([RecordsProblems.CompetenceOver, RecordsProblems.StatementOver], Codes(await Move(new(2031, 2, 1))).Order());
        var moved = await records.Classes.AsNoTracking().SingleAsync(row => row.Id == day.Id, Cancellation);
        Assert.Equal((Ahead.AddDays(1), new TimeOnly(9, 30), 240), (moved.HeldOn, moved.StartsAt, moved.LengthMinutes));
    }

    [Fact]
    public async Task A_cancelled_class_takes_nobody_and_taught_nobody()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var day = await ClassAheadAsync(records, cast, 4);
        await records.TeachAsync(day.Id, cast.Instructor, Cancellation);
        await records.AttendAsync(day.Id, cast.Worker, Cancellation);
        Assert.Contains(await records.TeachingsOfAsync(cast.Worker, Cancellation), taught => taught.ClassId == day.Id);
        var off = new ClassCancellation { ClassId = day.Id, CancelledAt = Cast.Now, CancelledById = cast.Lead, Reason = "storm" };

        Assert.IsType<Kept.Stored>(await records.CancelAsync(off, Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.CancelAsync(off, Cancellation));
        Assert.Equal([RecordsProblems.ClassCancelled], Codes(await records.CancelAsync(
            new() { ClassId = day.Id, CancelledAt = Cast.Now, CancelledById = cast.Lead, Reason = "heat" }, Cancellation)));

        Assert.DoesNotContain(await records.TeachingsOfAsync(cast.Worker, Cancellation), taught => taught.ClassId == day.Id);
        Assert.Empty(await records.ClassesAheadAsync(cast.Employer, Ahead, Cancellation));
        Assert.Empty(await records.SeatsAheadAsync([cast.Worker], Ahead, Cancellation));
        Assert.Equal([RecordsProblems.ClassCancelled], Codes(await records.AttendAsync(day.Id, cast.Lead, Cancellation)));
        Assert.Contains(RecordsProblems.ClassCancelled, Codes(await records.ChangeAsync(
            Guid.CreateVersion7(), day.Id, new(Ahead, new(8, 0), 480, 9), cast.Lead, "again", Cast.Now, Cancellation)));
    }

    /// <summary>The table of docs/rules.md, "Class days": who counts as taught.</summary>
    [Theory]
    [InlineData(false, "", false, true)]
    [InlineData(false, "c", false, true)]
    [InlineData(false, "n", false, false)]
    [InlineData(false, "nc", false, true)]
    [InlineData(false, "cn", false, false)]
    [InlineData(false, "n", true, true)]
    [InlineData(true, "", false, false)]
    [InlineData(true, "", true, true)]
    public async Task Who_did_not_come_was_not_taught(bool isGivenBack, string words, bool isScored, bool isTaught)
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        records.Add(new ClassTeaching { ClassId = cast.Class, InstructorId = cast.OtherLead });
        await records.SaveChangesAsync(Cancellation);
        foreach (var word in words)
        {
            Assert.IsType<Kept.Stored>(await records.MarkAsync(
                Guid.CreateVersion7(), cast.Class, cast.Worker, word == 'c' ? Presence.Came : Presence.DidNotCome, null, cast.Instructor, Cast.Now, Cancellation));
        }

        if (isGivenBack) Assert.IsType<Kept.Stored>(await BackAsync(records, cast.Class, cast.Worker));
        // Phones send what was scored at the time: it is never lost to what somebody marked meanwhile.
        if (isScored) await records.KeepAsync(cast.Sheet(), Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation);

        Assert.Equal(isTaught, (await records.TeachingsOfAsync(cast.Worker, Cancellation)).Any(taught => taught.InstructorId == cast.OtherLead));
    }

    [Fact]
    public async Task Who_came_is_marked_from_the_day_on_and_each_form_once()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var day = await ClassAheadAsync(records, cast, 4);
        await records.AttendAsync(day.Id, cast.Worker, Cancellation);
        var form = Guid.CreateVersion7();

        Task<Kept> Mark(Presence presence, DateTimeOffset now, Guid? id = null) =>
            records.MarkAsync(id ?? form, day.Id, cast.Worker, presence, null, cast.Instructor, now, Cancellation);

        Assert.Equal([RecordsProblems.ClassNotYet], Codes(await Mark(Presence.DidNotCome, Cast.Now.AddDays(8))));
        Assert.IsType<Kept.Stored>(await Mark(Presence.DidNotCome, Cast.Now.AddDays(9)));
        Assert.IsType<Kept.AlreadyStored>(await Mark(Presence.DidNotCome, Cast.Now.AddDays(9)));
        Assert.Equal([RecordsProblems.OtherContent], Codes(await Mark(Presence.Came, Cast.Now.AddDays(9))));
        Assert.IsType<Kept.Stored>(await Mark(Presence.Came, Cast.Now.AddDays(10), Guid.CreateVersion7()));
        Assert.Equal(Presence.Came, Assert.Single(await records.PresencesAsync(day.Id, Cancellation)).Value.Presence);
    }

    [Fact]
    public async Task Everybody_expected_is_to_be_told_and_so_is_who_was_told_and_is_expected_no_more()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var day = await ClassAheadAsync(records, cast, 4);
        await records.TeachAsync(day.Id, cast.Instructor, Cancellation);
        await records.AttendAsync(day.Id, cast.Worker, Cancellation);
        await records.BriefAsync(Guid.CreateVersion7(), day.Id, "Gate 3", "2 hooks", "", cast.Lead, Cast.Now, Cancellation);
        ClassInvitation Told(int sequence) => new()
        {
            Id = Guid.CreateVersion7(), ClassId = day.Id, PersonId = cast.Worker, Sequence = sequence, IsCancellation = false, HeldOn = Ahead, StartsAt = new(8, 0),
            LengthMinutes = 480, MeetingPlace = "Gate 3", MadeAt = Cast.Now, MailId = null,
        };

        Assert.True(await records.TryKeepAsync(Told(0), null, Cancellation));
        Assert.True(await records.TryKeepAsync(Told(1), null, Cancellation));
        Assert.False(await records.TryKeepAsync(Told(1), null, Cancellation));
        await BackAsync(records, day.Id, cast.Worker);

        ClassToTell? found = null;
        await foreach (var one in records.ClassesToTellAsync(Cast.Today, Cancellation)) found = one.Class.Id == day.Id ? one : found;
        Assert.Equal("Gate 3", found!.Briefing!.MeetingPlace);
        Assert.Equal([(cast.Instructor, ClassPart.Teaches), (cast.Worker, null)], found.People.Select(one => (one.PersonId, one.Part)).OrderByDescending(one => one.Part is not null));
        Assert.Equal(1, found.People.Single(one => one.PersonId == cast.Worker).Last!.Sequence);
    }
}
