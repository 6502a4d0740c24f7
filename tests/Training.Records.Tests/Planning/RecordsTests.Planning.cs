using Microsoft.EntityFrameworkCore;
using Training.Certification;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    private static ClassPlanRecord PlanOf(Cast cast, Guid? id = null, int seats = 8) => new()
    {
        Id = id ?? Guid.CreateVersion7(), EmployerId = cast.Employer, SchemeId = cast.CourseId, CourseId = cast.CourseId, StartsOn = Cast.Today.AddDays(1),
        EndsOn = Cast.Today.AddDays(60), Weekdays = 62, Seats = seats, MostClassesADay = 1, MostClassesEach = 10, MostTravelMinutes = 60, MarginDays = 7, People = 1,
        LeastClasses = 1, LeastUnmet = 0, IsSearchCut = false, LeadId = cast.Lead, KeptAt = Cast.Now,
    };

    /// <summary>A second instructor, so that one teaches and another scores.</summary>
    private async Task<(Cast Cast, Guid Scorer)> StaffAsync()
    {
        var (cast, scorer) = (await Cast.CreateAsync(Database), Guid.CreateVersion7());
        await using var records = Database.Open();
        records.Add(new Person { Id = scorer, Language = Courses.Language.English });
        records.AddRange(cast.CompetenceOf(scorer));
        records.Add(new InstructorStatement { Id = Guid.CreateVersion7(), PersonId = scorer, StatedOn = new(2026, 1, 1), KeptAt = Cast.Now });
        records.Add(new Appointment { Id = Guid.CreateVersion7(), PersonId = scorer, StartsOn = new(2024, 1, 1), Role = AppointedRole.Instructor, Languages = [Courses.Language.English] });
        await records.SaveChangesAsync(Cancellation);
        return (cast, scorer);
    }

    private static PlannedClass PlannedOn(Cast cast, Guid scorer, int days, params Guid[] workers) =>
        new(Cast.Today.AddDays(days), cast.Site, cast.Instructor, scorer, workers);

    private static ClassPlanAcceptance Accepted(ClassPlanRecord plan, int number = 1) =>
        new() { PlanId = plan.Id, Number = number, LeadId = plan.LeadId, AcceptedAt = Cast.Now };

    private static InstructorDays DaysOf(Cast cast, bool isFree, int minute, DateOnly from, DateOnly through, int weekdays = 127) => new()
    {
        Id = Guid.CreateVersion7(), InstructorId = cast.Instructor, StartsOn = from, EndsOn = through, Weekdays = weekdays, IsFree = isFree, EnteredById = cast.Lead,
        KeptAt = Cast.Now.AddMinutes(minute),
    };

    [Fact]
    public async Task A_plan_is_proposed_once_with_its_classes()
    {
        var (cast, scorer) = await StaffAsync();
        await using var records = Database.Open();
        var plan = PlanOf(cast);
        var one = PlannedOn(cast, scorer, 10, cast.Worker);

        Assert.IsType<Kept.Stored>(await records.KeepAsync(plan, [one], Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.KeepAsync(PlanOf(cast, plan.Id), [], Cancellation));
        Assert.Equal([RecordsProblems.OtherContent], Codes(await records.KeepAsync(PlanOf(cast, plan.Id, seats: 9), [one], Cancellation)));

        var kept = Assert.IsType<KeptPlan>(await records.FindPlanAsync(plan.Id, Cancellation));
        var stored = Assert.Single(kept.Newest.Classes);
        Assert.Equal((one.Day, one.SiteId, one.TeacherId, one.ScorerId), (stored.Day, stored.SiteId, stored.TeacherId, stored.ScorerId));
        Assert.Equal([cast.Worker], stored.WorkerIds);
    }

    [Fact]
    public async Task Of_two_who_change_one_version_the_second_is_told()
    {
        var (cast, scorer) = await StaffAsync();
        await using var records = Database.Open();
        var plan = PlanOf(cast);
        await records.KeepAsync(plan, [PlannedOn(cast, scorer, 10, cast.Worker)], Cancellation);
        ClassPlanVersion Version(Guid form, int days) => new()
        {
            PlanId = plan.Id, Number = 2, FormId = form, Classes = [PlannedOn(cast, scorer, days, cast.Worker)], ById = cast.Lead, KeptAt = Cast.Now,
        };
        var form = Guid.CreateVersion7();

        Assert.IsType<Kept.Stored>(await records.KeepAsync(Version(form, 11), Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.KeepAsync(Version(form, 11), Cancellation));
        Assert.Equal([RecordsProblems.OtherContent], Codes(await records.KeepAsync(Version(form, 12), Cancellation)));
        Assert.Equal([RecordsProblems.PlanChanged], Codes(await records.KeepAsync(Version(Guid.CreateVersion7(), 12), Cancellation)));
    }

    [Fact]
    public async Task Accepting_makes_classes_instructors_and_seats_once()
    {
        var (cast, scorer) = await StaffAsync();
        await using var records = Database.Open();
        var plan = PlanOf(cast);
        await records.KeepAsync(plan, [PlannedOn(cast, scorer, 10, cast.Worker), PlannedOn(cast, scorer, 20, cast.OtherLead)], Cancellation);

        Assert.IsType<Kept.Stored>(await records.AcceptAsync(Accepted(plan), Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.AcceptAsync(Accepted(plan), Cancellation));

        var kept = Assert.IsType<KeptPlan>(await records.FindPlanAsync(plan.Id, Cancellation));
        Assert.Equal([Cast.Today.AddDays(10), Cast.Today.AddDays(20)], kept.Made.Select(made => made.HeldOn));
        Assert.All(kept.Made, made => Assert.Equal((cast.Site, cast.CourseId, 8), (made.SiteId, made.CourseId, made.Capacity)));
        var first = kept.Made[0].Id;
        Assert.Equal(cast.Worker, await records.ClassAttendances.Where(row => row.ClassId == first).Select(row => row.PersonId).SingleAsync(Cancellation));
        Assert.Equal(cast.Instructor, await records.ClassTeachings.Where(row => row.ClassId == first).Select(row => row.InstructorId).SingleAsync(Cancellation));
        Assert.Equal(scorer, await records.ClassScorers.Where(row => row.ClassId == first).Select(row => row.InstructorId).SingleAsync(Cancellation));
    }

    [Fact]
    public async Task A_plan_that_cannot_be_made_whole_makes_nothing()
    {
        var (cast, scorer) = await StaffAsync();
        await using var records = Database.Open();
        var plan = PlanOf(cast);
        await records.KeepAsync(plan, [PlannedOn(cast, scorer, 10, cast.Worker), PlannedOn(cast, cast.Worker, 20, cast.OtherLead)], Cancellation);

        Assert.Equal([RecordsProblems.NotAnInstructor], Codes(await records.AcceptAsync(Accepted(plan), Cancellation)));

        await using var read = Database.Open();
        var kept = Assert.IsType<KeptPlan>(await read.FindPlanAsync(plan.Id, Cancellation));
        Assert.Null(kept.Acceptance);
        Assert.Empty(kept.Made);
        Assert.Equal(1, await read.Classes.CountAsync(day => day.SiteId == cast.Site, Cancellation));
    }

    [Fact]
    public async Task Only_the_newest_version_is_accepted_and_an_accepted_plan_is_changed_no_more()
    {
        var (cast, scorer) = await StaffAsync();
        await using var records = Database.Open();
        var plan = PlanOf(cast);
        await records.KeepAsync(plan, [PlannedOn(cast, scorer, 10, cast.Worker)], Cancellation);
        ClassPlanVersion Version(int number) => new()
        {
            PlanId = plan.Id, Number = number, FormId = Guid.CreateVersion7(), Classes = [PlannedOn(cast, scorer, 11, cast.Worker)], ById = cast.Lead, KeptAt = Cast.Now,
        };
        await records.KeepAsync(Version(2), Cancellation);

        Assert.Equal([RecordsProblems.PlanChanged], Codes(await records.AcceptAsync(Accepted(plan, 1), Cancellation)));
        Assert.IsType<Kept.Stored>(await records.AcceptAsync(Accepted(plan, 2), Cancellation));
        Assert.Equal([RecordsProblems.PlanAccepted], Codes(await records.KeepAsync(Version(3), Cancellation)));
        Assert.Equal([RecordsProblems.PlanAccepted], Codes(await records.AcceptAsync(Accepted(plan, 1), Cancellation)));
    }

    [Fact]
    public async Task Of_the_rows_that_name_a_day_the_one_kept_last_serves()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var (from, through) = (Cast.Today, Cast.Today.AddDays(13));
        await records.KeepAsync(DaysOf(cast, true, 0, from, through, weekdays: 0b0010100), Cancellation); // Tuesdays and Thursdays
        await records.KeepAsync(DaysOf(cast, false, 1, new(2026, 5, 7), new(2026, 5, 7)), Cancellation);

        List<InstructorDays> rows = [.. (await records.InstructorDaysAsync([cast.Instructor], from, Cancellation))[cast.Instructor]];

        Assert.Equal(
            [new DateOnly(2026, 5, 5), new(2026, 5, 12), new(2026, 5, 14)],
            Enumerable.Range(0, 14).Select(from.AddDays).Where(day => InstructorDays.IsFreeOn(rows, day)));
    }

    [Fact]
    public async Task A_way_is_kept_either_way_and_the_one_said_last_serves()
    {
        var cast = await Cast.CreateAsync(Database);
        var foreign = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var other = new Site { Id = Guid.CreateVersion7(), EmployerId = cast.Employer, Name = "Block 8", Zone = Cast.Zone, Region = "US" };
        records.Add(other);
        await records.SaveChangesAsync(Cancellation);
        records.ChangeTracker.Clear();
        SiteTravel Way(Guid one, Guid two, int minutes, int minute) =>
            new() { Id = Guid.CreateVersion7(), SiteId = one, OtherSiteId = two, Minutes = minutes, SetById = cast.Lead, KeptAt = Cast.Now.AddMinutes(minute) };

        Assert.IsType<Kept.Stored>(await records.KeepAsync(Way(cast.Site, other.Id, 60, 0), Cancellation));
        Assert.IsType<Kept.Stored>(await records.KeepAsync(Way(other.Id, cast.Site, 75, 1), Cancellation));
        Assert.Equal([RecordsProblems.SiteUnknown], Codes(await records.KeepAsync(Way(cast.Site, foreign.Site, 60, 2), Cancellation)));

        Assert.Equal([new Travel(other.Id, cast.Site, 75)], await records.TravelsAsync(cast.Employer, Cancellation));
    }
}
