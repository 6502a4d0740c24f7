using Microsoft.EntityFrameworkCore;
using Training.Courses;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    [Fact]
    public async Task Of_two_servers_one_takes_a_mail_and_the_other_only_once_its_lease_is_over()
    {
        // An instant of its own: other tests' mails are not due then.
        var now = Cast.Now.AddYears(-20);
        var mail = await KeepMailAsync(now);
        await using var one = Database.Open();
        await using var other = Database.Open();

        var taken = await Task.WhenAll(one.TakeMailAsync(now, Cancellation), other.TakeMailAsync(now, Cancellation));

        Assert.Equal(mail, Assert.Single(taken, row => row is not null)!.Id); // not null: filtered
        Assert.Null(await one.TakeMailAsync(now + MailKeeping.Lease - TimeSpan.FromMilliseconds(1), Cancellation));
        Assert.Equal(mail, (await other.TakeMailAsync(now + MailKeeping.Lease, Cancellation))?.Id);
    }

    [Fact]
    public async Task A_mail_that_was_sent_or_given_up_is_not_taken_and_one_given_up_can_be_put_back()
    {
        var now = Cast.Now.AddYears(-30);
        var mail = await KeepMailAsync(now);
        await using var records = Database.Open();
        await records.KeepFailureAsync((await records.TakeMailAsync(now, Cancellation))!, "no", nextTryAt: null, now, Cancellation); // not null: just kept

        Assert.Null(await records.TakeMailAsync(now.AddYears(1), Cancellation));
        Assert.True(await records.TryAgainAsync(mail, now, Cancellation));
        Assert.False(await records.TryAgainAsync(mail, now, Cancellation));
        await records.KeepSentAsync((await records.TakeMailAsync(now, Cancellation))!, now, Cancellation); // not null: put back

        Assert.Null(await records.TakeMailAsync(now.AddYears(1), Cancellation));
        var sent = await records.OutgoingMails.AsNoTracking().SingleAsync(row => row.Id == mail, Cancellation);
        Assert.Equal((now, "no", 0), (sent.SentAt, sent.LastAnswer, sent.FailedTries));
    }

    [Fact]
    public async Task An_address_is_unreachable_once_and_no_longer_when_it_is_kept_anew()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        await records.KeepMailAddressAsync(cast.Worker, "ileana@example.org", Cancellation);

        await records.KeepUnreachableAsync(cast.Worker, "ileana@example.org", new string('x', 2 * Bounds.Conditions), Cast.Now, Cancellation);
        await records.KeepUnreachableAsync(cast.Worker, "ileana@example.org", "again", Cast.Now, Cancellation);

        Assert.Equal(Bounds.Conditions, (await records.UnreachableAddresses.SingleAsync(row => row.PersonId == cast.Worker, Cancellation)).Answer.Length);
        Assert.True(await records.KeepMailAddressAsync(cast.Worker, "ileana@example.org", Cancellation));
        Assert.False(await records.UnreachableAddresses.AnyAsync(row => row.PersonId == cast.Worker, Cancellation));
        Assert.False(await records.KeepMailAddressAsync(Guid.CreateVersion7(), "ileana@example.org", Cancellation));
    }

    private async Task<Guid> KeepMailAsync(DateTimeOffset now)
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var mail = new OutgoingMail
        {
            Id = Guid.CreateVersion7(), PersonId = cast.Worker, Address = "ileana@example.org", Language = Language.English, Subject = "A reminder",
            Text = "A reminder", MadeAt = now, NextTryAt = now,
        };
        records.Add(mail);
        await records.SaveChangesAsync(Cancellation);
        return mail.Id;
    }
}
