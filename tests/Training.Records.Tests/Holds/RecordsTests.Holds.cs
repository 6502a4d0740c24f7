using Training.Certification;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    [Fact]
    public async Task A_hold_reads_back_and_ends_with_the_conclusion_of_its_review()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var review = ReviewRecord.OfPerson(ReviewCause.NearMiss, Guid.CreateVersion7(), cast.Worker, cast.Site, Cast.Today, Cast.Now);
        var beside = ReviewRecord.OfPerson(ReviewCause.ReportedCapability, Guid.CreateVersion7(), cast.Worker, cast.Site, Cast.Today, Cast.Now);
        records.AddRange([.. review.WithHold(), beside]);
        await records.SaveChangesAsync(Cancellation);
        records.ChangeTracker.Clear();
        var people = records.Persons.Where(person => person.Id == cast.Worker).Select(person => person.Id);

        var open = new Hold(review.Id, cast.Worker, Cast.Today, ReviewCause.NearMiss, review.EventId, null);
        Assert.Equal([open], await records.HoldsOfAsync(people, Cancellation));
        Assert.Equal([open], await records.HoldsOfAsync(cast.Worker, Cancellation));
        Assert.Empty(await records.HoldsOfAsync(cast.Instructor, Cancellation));

        var conclusion = new ReviewConclusion(Cast.Today.AddDays(3), cast.Lead, "We walked through it: the lid came first.");
        Assert.IsType<Kept.Stored>(await records.ConcludeReviewAsync(review.Id, conclusion, Cast.Now, Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.ConcludeReviewAsync(review.Id, conclusion, Cast.Now.AddMinutes(1), Cancellation));
        Assert.Equal([open with { Conclusion = conclusion }], await records.HoldsOfAsync(people, Cancellation));
    }

    [Fact]
    public async Task The_first_conclusion_of_a_review_stands()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var review = ReviewRecord.OfSite(ReviewCause.Bite, Guid.CreateVersion7(), cast.Site, Cast.Today, Cast.Now);
        records.Add(review);
        await records.SaveChangesAsync(Cancellation);
        records.ChangeTracker.Clear();
        var conclusion = new ReviewConclusion(Cast.Today, cast.Lead, "The gate now closes.");

        Assert.IsType<Kept.Stored>(await records.ConcludeReviewAsync(review.Id, conclusion, Cast.Now, Cancellation));
        Assert.Equal(
            [RecordsProblems.ReviewConcluded],
            Codes(await records.ConcludeReviewAsync(review.Id, conclusion with { By = cast.OtherLead }, Cast.Now, Cancellation)));
    }

    [Fact]
    public async Task Only_a_lead_of_that_day_concludes_and_never_about_themselves()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var review = ReviewRecord.OfPerson(ReviewCause.NearMiss, Guid.CreateVersion7(), cast.Lead, null, Cast.Today, Cast.Now);
        records.AddRange(review.WithHold());
        await records.SaveChangesAsync(Cancellation);
        records.ChangeTracker.Clear();
        async Task<IEnumerable<string>> Refused(Guid id, Guid by, DateOnly on) =>
            Codes(await records.ConcludeReviewAsync(id, new(on, by, "All is well."), Cast.Now, Cancellation));

        Assert.Equal([RecordsProblems.ReviewUnknown], await Refused(Guid.CreateVersion7(), cast.OtherLead, Cast.Today));
        Assert.Equal([RecordsProblems.LeadAboutOneself], await Refused(review.Id, cast.Lead, Cast.Today));
        Assert.Equal([RecordsProblems.NotALead], await Refused(review.Id, cast.Instructor, Cast.Today));
        Assert.Equal([RecordsProblems.BeforeReview], await Refused(review.Id, cast.OtherLead, Cast.Today.AddDays(-1)));
        Assert.Null(Assert.Single(await records.HoldsOfAsync(cast.Lead, Cancellation)).Conclusion);
    }

    [Fact]
    public async Task An_event_opens_one_review_of_a_person()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var happened = Guid.CreateVersion7();
        ReviewRecord Review() => ReviewRecord.OfPerson(ReviewCause.NearMiss, happened, cast.Worker, cast.Site, Cast.Today, Cast.Now);

        Assert.True(await records.TryInsertAsync(Cancellation, Review().WithHold()));
        Assert.False(await records.TryInsertAsync(Cancellation, Review().WithHold()));
        Assert.Single(await records.HoldsOfAsync(cast.Worker, Cancellation));
    }
}
