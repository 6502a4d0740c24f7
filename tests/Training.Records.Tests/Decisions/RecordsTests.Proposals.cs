using Training.Certification;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    private static Task<Kept> ProposeAsync(RecordsContext records, Cast cast, Guid? id = null, Guid? lead = null, string reason = "False scoresheet.") =>
        records.ProposeWithdrawalAsync(
            id ?? Guid.CreateVersion7(), cast.Worker, cast.CourseId, lead ?? cast.Lead, reason, Cast.Today, Cast.Now, Cancellation);

    private async Task<Guid> ProposedAsync(Cast cast)
    {
        await cast.KeepGrantedAsync(Database);
        await using var records = Database.Open();
        return Assert.IsType<Kept.Stored>(await ProposeAsync(records, cast)).Id;
    }

    [Fact]
    public async Task A_proposal_changes_nothing_until_another_lead_confirms_it()
    {
        var cast = await Cast.CreateAsync(Database);
        var id = await ProposedAsync(cast);
        await using var records = Database.Open();

        Assert.Empty(Assert.Single(await records.HeldCertificationsAsync(cast.Worker, Cancellation)).Withdrawals);
        Assert.Equal(id, Assert.Single(await records.OpenProposalsAsync(cast.Worker, Cancellation)).Id);
        Assert.Equal(new Kept.Stored(id), await records.ConfirmWithdrawalAsync(id, cast.OtherLead, Cast.Today.AddDays(1), Cast.Now, Cancellation));

        Assert.Equal(
            [new Withdrawal(Cast.Today.AddDays(1), cast.Lead, cast.OtherLead, "False scoresheet.")],
            Assert.Single(await records.HeldCertificationsAsync(cast.Worker, Cancellation)).Withdrawals);
        Assert.Empty(await records.OpenProposalsAsync(cast.Worker, Cancellation));
        Assert.Equal(new Kept.AlreadyStored(id), await records.ConfirmWithdrawalAsync(id, cast.OtherLead, Cast.Today.AddDays(1), Cast.Now, Cancellation));
    }

    [Fact]
    public async Task The_lead_who_proposed_does_not_confirm()
    {
        var cast = await Cast.CreateAsync(Database);
        var id = await ProposedAsync(cast);
        await using var records = Database.Open();

        Assert.Equal(
            [RecordsProblems.SecondLeadRequired], Codes(await records.ConfirmWithdrawalAsync(id, cast.Lead, Cast.Today, Cast.Now, Cancellation)));
        Assert.Empty(Assert.Single(await records.HeldCertificationsAsync(cast.Worker, Cancellation)).Withdrawals);
        Assert.Single(await records.OpenProposalsAsync(cast.Worker, Cancellation));
    }

    [Fact]
    public async Task Of_leads_who_confirm_at_once_one_withdraws()
    {
        var cast = await Cast.CreateAsync(Database);
        var id = await ProposedAsync(cast);
        var leads = new List<Guid> { cast.OtherLead };
        await using (var records = Database.Open())
        {
            for (var number = 0; number < 5; number++) leads.Add(await NewLeadAsync(records));
        }

        var kept = await Task.WhenAll(leads.Select(lead => Task.Run(async () =>
        {
            await using var records = Database.Open();
            return await records.ConfirmWithdrawalAsync(id, lead, Cast.Today, Cast.Now, Cancellation);
        })));

        Assert.Single(kept.OfType<Kept.Stored>());
        Assert.All(kept.OfType<Kept.Refused>(), refused => Assert.Equal([RecordsProblems.ProposalSettled], Codes(refused)));
        await using var read = Database.Open();
        Assert.Single(Assert.Single(await read.HeldCertificationsAsync(cast.Worker, Cancellation)).Withdrawals);
    }

    [Fact]
    public async Task A_confirmation_and_a_taking_back_at_once_leave_one_of_the_two()
    {
        var cast = await Cast.CreateAsync(Database);
        var id = await ProposedAsync(cast);

        var kept = await Task.WhenAll(
            Task.Run(async () =>
            {
                await using var records = Database.Open();
                return await records.ConfirmWithdrawalAsync(id, cast.OtherLead, Cast.Today, Cast.Now, Cancellation);
            }),
            Task.Run(async () =>
            {
                await using var records = Database.Open();
                return await records.TakeBackProposalAsync(id, cast.Lead, Cast.Today, Cast.Now, Cancellation);
            }));

        Assert.Single(kept.OfType<Kept.Stored>());
        Assert.Equal([RecordsProblems.ProposalSettled], Codes(Assert.Single(kept.OfType<Kept.Refused>())));
        await using var read = Database.Open();
        var withdrawals = Assert.Single(await read.HeldCertificationsAsync(cast.Worker, Cancellation)).Withdrawals;
        Assert.Equal(kept[0] is Kept.Stored, withdrawals.Count == 1);
    }

    [Fact]
    public async Task Only_the_proposer_takes_back_and_a_new_proposal_may_follow()
    {
        var cast = await Cast.CreateAsync(Database);
        var id = await ProposedAsync(cast);
        await using var records = Database.Open();

        Assert.Equal([RecordsProblems.NotTheProposer], Codes(await records.TakeBackProposalAsync(id, cast.OtherLead, Cast.Today, Cast.Now, Cancellation)));
        Assert.Equal(new Kept.Stored(id), await records.TakeBackProposalAsync(id, cast.Lead, Cast.Today, Cast.Now, Cancellation));
        Assert.Equal(new Kept.AlreadyStored(id), await records.TakeBackProposalAsync(id, cast.Lead, Cast.Today, Cast.Now, Cancellation));
        Assert.Equal([RecordsProblems.ProposalSettled], Codes(await records.ConfirmWithdrawalAsync(id, cast.OtherLead, Cast.Today, Cast.Now, Cancellation)));

        Assert.IsType<Kept.Stored>(await ProposeAsync(records, cast, lead: cast.OtherLead));
    }

    [Fact]
    public async Task One_proposal_is_open_for_a_period()
    {
        var cast = await Cast.CreateAsync(Database);
        await cast.KeepGrantedAsync(Database);

        var kept = await Task.WhenAll(Enumerable.Range(0, 8).Select(number => Task.Run(async () =>
        {
            await using var records = Database.Open();
            return await ProposeAsync(records, cast, lead: number % 2 == 0 ? cast.Lead : cast.OtherLead);
        })));

        Assert.Single(kept.OfType<Kept.Stored>());
        Assert.All(kept.OfType<Kept.Refused>(), refused => Assert.Equal([RecordsProblems.ProposedAlready], Codes(refused)));
    }

    [Fact]
    public async Task The_same_proposal_again_is_the_stored_one_and_another_under_its_id_is_refused()
    {
        var cast = await Cast.CreateAsync(Database);
        var id = await ProposedAsync(cast);
        await using var records = Database.Open();

        Assert.Equal(new Kept.AlreadyStored(id), await ProposeAsync(records, cast, id));
        Assert.Equal([RecordsProblems.OtherContent], Codes(await ProposeAsync(records, cast, id, reason: "Another reason.")));
    }

    [Fact]
    public async Task A_proposal_says_nothing_about_a_period_decided_after_it()
    {
        var cast = await Cast.CreateAsync(Database);
        var id = await ProposedAsync(cast);
        await cast.KeepGrantedAsync(Database, number: 2);
        await using var records = Database.Open();

        Assert.Empty(await records.OpenProposalsAsync(cast.Worker, Cancellation));
        Assert.Equal([RecordsProblems.PeriodTaken], Codes(await records.ConfirmWithdrawalAsync(id, cast.OtherLead, Cast.Today, Cast.Now, Cancellation)));
        Assert.IsType<Kept.Stored>(await ProposeAsync(records, cast));
    }

    [Fact]
    public async Task Nothing_is_proposed_that_is_not_held_or_withdrawn_already_or_by_somebody_not_appointed()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();

        Assert.Equal([RecordsProblems.NothingHeld, RecordsProblems.NotALead], Codes(await ProposeAsync(records, cast, lead: cast.Instructor)));
        var id = await ProposedAsync(cast);
        await records.ConfirmWithdrawalAsync(id, cast.OtherLead, Cast.Today, Cast.Now, Cancellation);
        Assert.Equal([RecordsProblems.WithdrawnAlready], Codes(await ProposeAsync(records, cast)));
        Assert.Equal(
            [RecordsProblems.ProposalUnknown],
            Codes(await records.ConfirmWithdrawalAsync(Guid.CreateVersion7(), cast.Lead, Cast.Today, Cast.Now, Cancellation)));
    }

    [Fact]
    public async Task No_lead_suspends_reinstates_or_withdraws_what_they_hold_themselves()
    {
        var cast = await Cast.CreateAsync(Database);
        await cast.KeepGrantedAsync(Database);
        await using var records = Database.Open();
        await AppointAsync(records, cast.Worker);
        var suspension = new Suspension(Cast.Today, cast.Worker, "x", Cast.Today, null);

        Assert.Equal([RecordsProblems.LeadAboutOneself], Codes(await records.SuspendAsync(
            Guid.CreateVersion7(), cast.Worker, cast.CourseId, suspension, Cast.Now, Cancellation)));
        Assert.IsType<Kept.Stored>(await records.SuspendAsync(
            Guid.CreateVersion7(), cast.Worker, cast.CourseId, suspension with { By = cast.Lead }, Cast.Now, Cancellation));
        Assert.Equal([RecordsProblems.LeadAboutOneself], Codes(await records.ReinstateAsync(
            cast.Worker, cast.CourseId, new(Cast.Today, cast.Worker, "x"), Cast.Now, Cancellation)));
        Assert.Equal([RecordsProblems.LeadAboutOneself], Codes(await ProposeAsync(records, cast, lead: cast.Worker)));
        var id = Assert.IsType<Kept.Stored>(await ProposeAsync(records, cast)).Id;
        Assert.Equal([RecordsProblems.LeadAboutOneself], Codes(await records.ConfirmWithdrawalAsync(id, cast.Worker, Cast.Today, Cast.Now, Cancellation)));
    }

    [Fact]
    public async Task A_deadline_before_the_suspension_is_refused()
    {
        var cast = await Cast.CreateAsync(Database);
        await cast.KeepGrantedAsync(Database);
        await using var records = Database.Open();

        Assert.Equal([RecordsProblems.DeadlineBeforeStart], Codes(await records.SuspendAsync(
            Guid.CreateVersion7(), cast.Worker, cast.CourseId, new(Cast.Today, cast.Lead, "x", Cast.Today.AddDays(-1), null), Cast.Now, Cancellation)));
    }

    private static async Task<Guid> NewLeadAsync(RecordsContext records)
    {
        var person = new Person { Id = Guid.CreateVersion7(), Language = Courses.Language.English };
        records.Add(person);
        await records.SaveChangesAsync(Cancellation);
        await AppointAsync(records, person.Id);
        return person.Id;
    }

    private static async Task AppointAsync(RecordsContext records, Guid personId) => Assert.IsType<Kept.Stored>(await records.KeepAsync(
        new Appointment
        {
            Id = Guid.CreateVersion7(), PersonId = personId, StartsOn = new(2024, 1, 1), Role = AppointedRole.ProgrammeLead, Languages = [],
        },
        Cancellation));
}
