using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Documents.Credentials;
using Training.Records;

namespace Training.Web.Tests.House;

/// <summary>Puts invented papers into the records of a running site; each call makes a person of its own.</summary>
internal static class Papers
{
    public static Serial ASerial() => Serial.Draw(RandomNumberGenerator.GetInt32);

    /// <summary>One period of one certification, with the paper of its decision.</summary>
    public static async Task<(Serial Serial, Guid PersonId, Guid DecisionId)> IssueAsync(
        this RunningSite site, string schemeId, DateOnly startsOn, DateOnly expiresOn, string name = "Ileana Prado-Whitt", string zone = "America/Denver")
    {
        var personId = Guid.CreateVersion7();
        await site.RecordAsync(async records =>
        {
            records.Add(new Person { Id = personId, Language = Language.English });
            records.Add(new PersonName { Id = Guid.CreateVersion7(), PersonId = personId, Text = name, StartsOn = startsOn });
            await records.SaveChangesAsync();
        });
        return await site.HoldAsync(personId, schemeId, startsOn, expiresOn, zone);
    }

    /// <summary>Gives a paper what its machine-readable forms need; the answer is its place in the status lists.</summary>
    public static async Task<int> GiveCredentialAsync(this RunningSite site, Serial serial)
    {
        var place = 0;
        await site.RecordAsync(async records =>
        {
            do place = RandomNumberGenerator.GetInt32(StatusList.FewestEntries);
            while (await records.PaperCredentials.AnyAsync(row => row.StatusIndex == place));
            var paperId = await records.Papers.Where(row => row.Serial == serial.Value).Select(row => row.Id).SingleAsync();
            records.Add(new PaperCredential { PaperId = paperId, StatusIndex = place, SubjectId = Guid.NewGuid() });
            await records.SaveChangesAsync();
        });
        return place;
    }

    /// <summary>The same for somebody who is there.</summary>
    public static async Task<(Serial Serial, Guid PersonId, Guid DecisionId)> HoldAsync(
        this RunningSite site, Guid personId, string schemeId, DateOnly startsOn, DateOnly expiresOn, string zone = "America/Denver")
    {
        var serial = ASerial();
        var decisionId = await site.GrantAsync(personId, schemeId, startsOn, expiresOn, zone);
        await site.RecordAsync(async records =>
        {
            var nameId = await records.PersonNames.Where(row => row.PersonId == personId).Select(row => row.Id).FirstAsync();
            records.Add(new PaperRecord
            {
                Id = Guid.CreateVersion7(), DecisionId = decisionId, Revision = 1, Serial = serial.Value, PersonNameId = nameId, IssuedAt = RunningSite.Now,
            });
            await records.SaveChangesAsync();
        });
        return (serial, personId, decisionId);
    }

    /// <summary>A period that was granted to somebody, without a paper.</summary>
    public static async Task<Guid> GrantAsync(
        this RunningSite site, Guid personId, string schemeId, DateOnly startsOn, DateOnly expiresOn, string zone = "America/Denver", Guid? leadId = null)
    {
        var decisionId = Guid.CreateVersion7();
        var course = site.Shelf.Find(schemeId)!;
        // A paper prints how long it holds: days where the test asks for other ones than the scheme.
        var validity = course.Scheme.Terms.Validity;
        if (validity.After(startsOn) != expiresOn) validity = new(expiresOn.DayNumber - startsOn.DayNumber, DurationUnit.Days);
        await site.RecordAsync(async records =>
        {
            records.Add(new DecisionRecord
            {
                Id = decisionId, PersonId = personId, SchemeId = schemeId, CourseHash = course.Hash, Route = Route.Grant,
                Outcome = DecisionOutcome.Granted, DecidedOn = startsOn, Zone = zone, LeadId = leadId, Reasons = "{\"version\":1,\"items\":[]}",
                KeptAt = new(startsOn, new TimeOnly(18, 0), TimeSpan.Zero),
            });
            records.Add(new PeriodRecord
            {
                DecisionId = decisionId, PersonId = personId, SchemeId = schemeId, Number = 1, DecidedOn = startsOn, StartsOn = startsOn,
                ExpiresOn = expiresOn, Validity = validity, Window = course.Scheme.Terms.Window, Grace = course.Scheme.Terms.Grace,
            });
            await records.SaveChangesAsync();
        });
        return decisionId;
    }
}
