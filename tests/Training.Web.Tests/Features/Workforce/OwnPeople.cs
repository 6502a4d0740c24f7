using System.Text.RegularExpressions;
using Training.Certification;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Workforce;

/// <summary>People of an employer, and what they hold.</summary>
internal static partial class OwnPeople
{
    /// <summary>Lets somebody hold a scheme; the decision is that of the published rule.</summary>
    public static Task HoldAsync(this RunningSite site, Guid personId, string schemeId, DateOnly startsOn, DateOnly expiresOn) =>
        site.AddAsync([.. Held(site, personId, schemeId, startsOn, expiresOn)]);

    public static IEnumerable<object> Held(RunningSite site, Guid personId, string schemeId, DateOnly startsOn, DateOnly expiresOn)
    {
        var course = site.Shelf.Find(schemeId)!;
        var decisionId = Guid.CreateVersion7();
        yield return new DecisionRecord
        {
            Id = decisionId, PersonId = personId, SchemeId = schemeId, CourseHash = course.Hash, Route = Route.Grant,
            Outcome = DecisionOutcome.Granted, DecidedOn = startsOn, Zone = "America/Denver", LeadId = null, Reasons = "[]", KeptAt = RunningSite.Now,
        };
        yield return new PeriodRecord
        {
            DecisionId = decisionId, PersonId = personId, SchemeId = schemeId, Number = 1, DecidedOn = startsOn, StartsOn = startsOn,
            ExpiresOn = expiresOn, Validity = course.Scheme.Terms.Validity, Window = course.Scheme.Terms.Window, Grace = course.Scheme.Terms.Grace,
        };
    }

    /// <summary>A worker who holds the handler scheme through a day.</summary>
    public static async Task<Guid> HandlerAsync(this RunningSite site, Guid employerId, Guid siteId, string name, string expiresOn)
    {
        var id = await site.WorkerAsync(employerId, siteId, name);
        await site.HoldAsync(id, "handler", Day("2025-11-03"), Day(expiresOn));
        return id;
    }

    public static DateOnly Day(string date) => DateOnly.ParseExact(date, "yyyy-MM-dd");

    /// <summary>The first line as it is read.</summary>
    public static string Says(this Reply answer) => Spaces().Replace(Tag().Replace(FirstLine().Match(answer.Html).Groups["text"].Value, ""), " ").Trim();

    /// <summary>All that is read, without tags.</summary>
    public static string Text(this Reply answer) => Spaces().Replace(Tag().Replace(answer.Html, " "), " ");

    [GeneratedRegex("<h1[^>]*>(?<text>.*?)</h1>", RegexOptions.ExplicitCapture | RegexOptions.Singleline, 1000)]
    private static partial Regex FirstLine();

    [GeneratedRegex("<[^>]*>", RegexOptions.None, 1000)]
    private static partial Regex Tag();

    [GeneratedRegex(@"\s+", RegexOptions.None, 1000)]
    private static partial Regex Spaces();
}
