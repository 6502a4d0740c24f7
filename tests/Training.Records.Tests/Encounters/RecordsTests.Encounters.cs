using Training.Certification;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    private static EncounterRecord Met(Cast cast, EncounterKind kind, Guid? handler = null, DateOnly? on = null, Guid? id = null, string place = "Block 7, gate") => new()
    {
        Id = id ?? Guid.CreateVersion7(), SiteId = cast.Site, ReporterId = cast.Instructor, Kind = kind, MetOn = on ?? Cast.Today, MetAt = new(6, 40), Place = place,
        Latitude = 33.45123m, Longitude = -112.0731m, SpeciesId = "western-diamondback", Done = "Stepped back.", FollowUp = "", CourseId = null,
        Handling = handler is null ? EncounterHandling.Nobody : EncounterHandling.Named, HandlerId = handler, ReportedOn = Cast.Today, KeptAt = Cast.Now,
    };

    [Fact]
    public async Task A_report_reads_back_with_its_move_and_what_was_added()
    {
        var cast = await Cast.CreateAsync(Database);
        await cast.KeepGrantedAsync(Database);
        await using var records = Database.Open();
        var met = Met(cast, EncounterKind.Moved, cast.Worker);
        var moved = new RelocationRecord
        {
            EncounterId = met.Id, DistanceMetres = 80, Tools = "H-2", Container = "B-4", MinutesHeld = 12, AirTemperature = 31, ReleaseCover = "Rocks", PermitNumber = "CW-2291",
        };

        Assert.IsType<Kept.Stored>(await records.KeepAsync(met, moved, new HashSet<string> { cast.CourseId }, Cancellation));
        Assert.IsType<Kept.Stored>(await records.KeepAsync(
            new EncounterAddition { Id = Guid.CreateVersion7(), EncounterId = met.Id, PersonId = cast.Worker, Words = "It was gate 8.", KeptAt = Cast.Now }, Cancellation));

        var found = (await records.FindEncounterAsync(records.Encounters, met.Id, Cancellation))!;
        Assert.Equal(("Block 7", 33.45123m, -112.0731m, new TimeOnly(6, 40)), (found.Line.SiteName, found.Line.Encounter.Latitude, found.Line.Encounter.Longitude, found.Line.Encounter.MetAt));
        Assert.Equal((80, "B-4", 12, 31), (found.Relocation!.DistanceMetres, found.Relocation.Container, found.Relocation.MinutesHeld, found.Relocation.AirTemperature));
        Assert.Equal(["It was gate 8."], found.Additions.Select(row => row.Words));
        Assert.Empty(found.Reviews);
        Assert.Null(await records.FindEncounterAsync(records.Encounters.Where(row => row.ReporterId == cast.Worker), met.Id, Cancellation));
    }

    [Fact]
    public async Task A_near_miss_of_a_handler_opens_one_review_with_a_hold_from_the_day_it_became_known_however_often_it_is_sent()
    {
        var cast = await Cast.CreateAsync(Database);
        await cast.KeepGrantedAsync(Database);
        await using var records = Database.Open();
        var met = Met(cast, EncounterKind.NearMiss, cast.Worker, Cast.Today);
        var certifications = new HashSet<string> { cast.CourseId };

        Assert.IsType<Kept.Stored>(await records.KeepAsync(met, null, certifications, Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.KeepAsync(Met(cast, EncounterKind.NearMiss, cast.Worker, Cast.Today, met.Id), null, certifications, Cancellation));
        Assert.Equal(
            [RecordsProblems.OtherContent],
            Codes(await records.KeepAsync(Met(cast, EncounterKind.NearMiss, cast.Worker, Cast.Today, met.Id, "Block 8"), null, certifications, Cancellation)));

        var hold = Assert.Single(await records.HoldsOfAsync(cast.Worker, Cancellation));
        Assert.Equal((Cast.Today, ReviewCause.NearMiss, met.Id), (hold.From, hold.Cause, hold.EventId));
        Assert.Contains(await records.OpenReviewsAsync(Cancellation), open => open.Review.Id == hold.ReviewId && open is { HasHold: true, SiteName: "Block 7" });
        Assert.Equal(met.Id, (await records.FindReviewAsync(hold.ReviewId, Cancellation))!.Encounter!.Id);
    }

    [Fact]
    public async Task A_certificate_of_training_makes_nobody_a_handler()
    {
        var cast = await Cast.CreateAsync(Database);
        await cast.KeepGrantedAsync(Database);
        await using var records = Database.Open();
        var met = Met(cast, EncounterKind.Bite, cast.Worker);

        Assert.IsType<Kept.Stored>(await records.KeepAsync(met, null, new HashSet<string> { "another-scheme" }, Cancellation));

        Assert.Empty(await records.HoldsOfAsync(cast.Worker, Cancellation));
        var review = Assert.Single((await records.FindEncounterAsync(records.Encounters, met.Id, Cancellation))!.Reviews);
        Assert.Equal((ReviewCause.Bite, null, cast.Site), (review.Cause, review.PersonId, review.SiteId));
    }

    [Fact]
    public async Task A_filter_lets_through_its_site_kind_and_span_and_the_counts_say_the_same()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        foreach (var (kind, ago) in new[] { (EncounterKind.Sighting, 0), (EncounterKind.Sighting, 10), (EncounterKind.Sighting, 10), (EncounterKind.Bite, 10), (EncounterKind.Sighting, 11) })
            Assert.IsType<Kept.Stored>(await records.KeepAsync(Met(cast, kind, on: Cast.Today.AddDays(-ago)), null, new HashSet<string>(), Cancellation));
        var filter = new EncounterFilter(cast.Site, EncounterKind.Sighting, Cast.Today.AddDays(-10), Cast.Today.AddDays(-1));

        var lines = await records.EncountersAsync(records.Encounters, filter, 100, Cancellation);
        var counts = await records.CountEncountersAsync(records.Encounters, filter, Cancellation);

        Assert.Equal(2, lines.Count);
        Assert.All(lines, line => Assert.Equal((EncounterKind.Sighting, Cast.Today.AddDays(-10)), (line.Encounter.Kind, line.Encounter.MetOn)));
        Assert.Equal([(2, Cast.Today.AddDays(-10))], counts.Select(count => (count.Count, count.MetOn)));
        Assert.Single(await records.EncountersAsync(records.Encounters, filter with { Kind = null }, 1, Cancellation));
    }

    [Fact]
    public async Task What_a_lead_enters_about_a_site_holds_whoever_is_named_and_about_a_person_as_the_lead_says()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        EnteredEvent Entry(ReviewCause cause, Guid? person) => new()
        {
            Id = Guid.CreateVersion7(), Cause = cause, SiteId = cast.Site, PersonId = person, Words = "New tongs.", LeadId = cast.Lead, EnteredOn = Cast.Today, KeptAt = Cast.Now,
        };
        var (atSite, light, heavy) = (Entry(ReviewCause.NewTool, null), Entry(ReviewCause.NewSite, cast.Instructor), Entry(ReviewCause.Other, cast.OtherLead));

        Assert.IsType<Kept.Stored>(await records.KeepAsync(atSite, [cast.Worker, cast.Worker], Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.KeepAsync(atSite, [cast.Worker, cast.Instructor], Cancellation));
        Assert.IsType<Kept.Stored>(await records.KeepAsync(light, ReviewWeight.ReviewOnly, Cancellation));
        Assert.IsType<Kept.Stored>(await records.KeepAsync(heavy, ReviewWeight.Hold, Cancellation));

        Assert.Equal(ReviewCause.NewTool, Assert.Single(await records.HoldsOfAsync(cast.Worker, Cancellation)).Cause);
        Assert.Empty(await records.HoldsOfAsync(cast.Instructor, Cancellation));
        Assert.Equal(ReviewCause.Other, Assert.Single(await records.HoldsOfAsync(cast.OtherLead, Cancellation)).Cause);
        await Assert.ThrowsAsync<ArgumentException>(() => records.KeepAsync(Entry(ReviewCause.Other, null), ReviewWeight.Hold, Cancellation));
    }

    [Fact]
    public async Task Handlers_of_a_site_are_those_whose_certification_is_current_that_day()
    {
        var cast = await Cast.CreateAsync(Database);
        await cast.KeepGrantedAsync(Database);
        await using var records = Database.Open();
        await records.KeepAsync(new SiteAssignment { Id = Guid.CreateVersion7(), PersonId = cast.Worker, SiteId = cast.Site, StartsOn = new(2026, 1, 1) }, Cancellation);
        var certifications = new HashSet<string> { cast.CourseId };

        Assert.Equal([cast.Worker], (await records.HandlersAtAsync(cast.Site, Cast.Today, certifications, Cancellation)).Select(person => person.PersonId));
        Assert.Empty(await records.HandlersAtAsync(cast.Site, Cast.Today.AddDays(-1), certifications, Cancellation));
        Assert.Empty(await records.HandlersAtAsync(cast.Site, Cast.Today, new HashSet<string>(), Cancellation));
        Assert.Equal([cast.Worker], (await records.PeopleAtAsync(cast.Site, Cast.Today.AddDays(-1), Cancellation)).Select(person => person.PersonId));
    }
}
