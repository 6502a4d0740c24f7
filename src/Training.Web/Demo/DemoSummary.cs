using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Cover;

namespace Training.Web.Demo;

/// <summary>Prints what the demo did. Every number is asked of the records, so that it is what the pages show too.</summary>
internal sealed class DemoSummary(RecordsContext records, IReadOnlyDictionary<string, Course> courses, DateOnly today, TextWriter output)
{
    /// <summary>How far ahead "soon" reaches.</summary>
    private static readonly Duration Soon = new(60, DurationUnit.Days);

    public async Task PrintAsync(DemoPlace place, Uri address, string password, CancellationToken cancellation)
    {
        Line($"DEMO on {Written(today)}: an invented provider, invented people. Nothing here may be used.");
        Line();
        await PrintGradedAsync(cancellation);
        await PrintDecidedAsync(cancellation);
        await PrintStandingAsync(cancellation);
        var example = await records.Papers.OrderByDescending(paper => paper.IssuedAt).Select(paper => paper.Serial).FirstAsync(cancellation);
        Line();
        Line($"Certificates lie in  {place.Papers}");
        Line($"Database             {place.Database}");
        Line($"Open                 {address}");
        Line($"Check a certificate  {new Uri(address, $"verify/{example}")}");
        Line($"Sign in              {new Uri(address, "en/sign-in")}, everybody with the password: {password}");
        await PrintAccountsAsync(cancellation);
        await output.FlushAsync(cancellation);
    }

    private async Task PrintAccountsAsync(CancellationToken cancellation)
    {
        var accounts = await (from account in records.Accounts
                              join name in records.PersonNames on account.PersonId equals name.PersonId
                              orderby account.UserName
                              select new
                              {
                                  account.UserName,
                                  Name = name.Text,
                                  Role = records.Appointments.Where(row => row.PersonId == account.PersonId).Select(row => (AppointedRole?)row.Role).FirstOrDefault(),
                                  Employer = (from row in records.Representatives
                                              where row.PersonId == account.PersonId
                                              join employer in records.Employers on row.EmployerId equals employer.Id
                                              select employer.Name).FirstOrDefault(),
                              }).ToListAsync(cancellation);
        var listed = accounts.Select(account => (
            Role: account.Role is { } role ? Word(role) : account.Employer is null ? "worker" : "employer", account.UserName, account.Name, account.Employer));
        foreach (var account in listed.OrderBy(account => account.Role, StringComparer.Ordinal))
            Line($"  {account.Role,-15} {account.UserName,-21} {account.Name}{(account.Employer is null ? "" : $", {account.Employer}")}");
    }

    private async Task PrintGradedAsync(CancellationToken cancellation)
    {
        var sittings = await records.SittingResults.GroupBy(result => result.IsPassed)
            .Select(group => new { group.Key, Count = group.Count() }).ToDictionaryAsync(group => group.Key, group => group.Count, cancellation);
        var sheets = await records.ScoresheetResults.GroupBy(result => result.Outcome)
            .Select(group => new { group.Key, Count = group.Count() }).ToListAsync(cancellation);
        Line($"Graded   {sittings.Values.Sum(),5} sittings: {sittings.GetValueOrDefault(true)} passed, {sittings.GetValueOrDefault(false)} not passed");
        Line($"         {sheets.Sum(group => group.Count),5} scoresheets: {string.Join(", ", sheets.OrderBy(group => group.Key).Select(group => $"{group.Count} {Word(group.Key)}"))}");
    }

    private async Task PrintDecidedAsync(CancellationToken cancellation)
    {
        var decisions = await records.Decisions.CountAsync(cancellation);
        var granted = await records.Periods.CountAsync(cancellation);
        var renewals = await records.Periods.CountAsync(period => period.Number > 1, cancellation);
        Line($"Decided  {decisions,5} cases: {granted} granted ({renewals} of them renewals), {decisions - granted} not yet");
        var papers = await records.Papers.CountAsync(cancellation);
        var files = await records.Renderings.CountAsync(cancellation);
        Line($"Issued   {papers,5} certificates as {files} PDF files, English and Spanish");
    }

    private async Task PrintStandingAsync(CancellationToken cancellation)
    {
        var held = await records.AllHeldCertificationsAsync(cancellation).ToListAsync(cancellation);
        foreach (var scheme in held.GroupBy(certification => certification.SchemeId).OrderBy(group => group.Key))
        {
            var standings = scheme.Select(certification => Standings.On(certification, today)).OfType<Standing>()
                .CountBy(standing => standing).OrderBy(pair => pair.Key).Select(pair => $"{pair.Value} {Word(pair.Key)}");
            Line($"Standing {scheme.Count(),5} {courses[scheme.Key].Scheme.Words[Language.English].Title}: {string.Join(", ", standings)}");
        }

        var by = Soon.After(today);
        var lapses = Lapses.By(held, today, by);
        Line();
        Line($"{lapses.Count} lapse from today through {Written(by)}, unless they renew:");
        foreach (var lapse in lapses) await PrintLapseAsync(lapse, cancellation);
        await PrintCoverAsync(cancellation);
    }

    private async Task PrintCoverAsync(CancellationToken cancellation)
    {
        Line();
        foreach (var employer in await records.Employers.OrderBy(row => row.NameKey).Select(row => new { row.Id, row.Name }).ToListAsync(cancellation))
        {
            var cover = await records.CoverAsync(employer.Id, today, [.. courses.Values], Language.English, cancellation);
            var told = cover.Places.FirstOrDefault(place => place.BelowOn is not null);
            var causes = told?.Told?.Leaving.Select(span => cover.Names.GetValueOrDefault(span.PersonId, "somebody")) ?? [];
            Line(told?.Told is not { } below
                ? $"Cover    {employer.Name}: every place has what it needs for 12 months, if nobody renews"
                : $"Cover    {employer.Name}: {told.Place.SiteName} {told.Place.CrewName} below its {below.Needed} handlers from {Written(below.From)} {string.Join(", ", causes)}".TrimEnd());
        }
    }

    private async Task PrintLapseAsync(Lapse lapse, CancellationToken cancellation)
    {
        var name = await records.FindNameAsync(lapse.PersonId, today, cancellation);
        var site = await records.FindSiteAsync(lapse.PersonId, today, cancellation);
        Line($"  {lapse.DaysLeft,3} days  {name?.Text,-32} {lapse.SchemeId,-10} current through {Written(lapse.ExpiresOn),-17} {site?.Name}  [{Word(lapse.Standing)}]");
    }

    private static string Word(Enum value) => string.Concat(value.ToString().Select((letter, place) =>
        place > 0 && char.IsUpper(letter) ? $" {char.ToLowerInvariant(letter)}" : $"{char.ToLowerInvariant(letter)}"));

    private static string Written(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    private void Line(string text = "") => output.WriteLine(text);
}
