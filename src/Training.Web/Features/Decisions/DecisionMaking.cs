using Training.Certification;
using Training.Courses;
using Training.Records;

namespace Training.Web.Features.Decisions;

/// <summary>Makes decisions: everything that the records hold about the person goes in, what comes out is kept, whatever it is.</summary>
public static class DecisionMaking
{
    /// <summary>The day that the validity of a granted period is counted from: what the paper says beside its last day.</summary>
    /// <remarks>Rule: docs/rules.md, "Renewal".</remarks>
    public static DateOnly CountedFrom(this CaseFile file, Decision.Granted granted)
    {
        var on = granted.Period.DecidedOn;
        if (granted.Route != Certification.Route.Renewal) return on;
        // The file may have been read after the decision was kept: what was renewed is the period before.
        var renewed = file.Held.First(held => held.SchemeId == file.Scheme.Id).Periods[granted.Period.Number - 2].ExpiresOn;
        return renewed > on ? renewed : on;
    }

    /// <summary>Decides and keeps the decision.</summary>
    /// <param name="records">Where from and where to.</param>
    /// <param name="id">Of the decision, made by the caller: the same again is the same decision.</param>
    /// <param name="personId">About whom.</param>
    /// <param name="course">The course whose scheme holds the rules in force.</param>
    /// <param name="decider">A named lead, or the rule itself.</param>
    /// <param name="decidedOn">The day, in <paramref name="zone"/>.</param>
    /// <param name="zone">IANA zone of the person's site on the day, else the provider's; kept with the decision.</param>
    /// <param name="now">UTC.</param>
    /// <param name="problems">Receives everything for which it cannot be kept.</param>
    /// <param name="cancellation">Ends the wait.</param>
    /// <returns>Granted or "not yet" as kept; null where a problem was found.</returns>
    public static async Task<MadeDecision?> DecideAsync(
        this RecordsContext records, Guid id, Guid personId, Course course, Decider decider, DateOnly decidedOn, string zone, DateTimeOffset now,
        ICollection<Problem> problems, CancellationToken cancellation)
    {
        var file = await records.FindCaseFileAsync(personId, course.Scheme, cancellation);
        if (file is null)
        {
            problems.Add(new(RecordsProblems.PersonUnknown, Place.Of("person"), personId.ToString()));
            return null;
        }

        var made = new MadeDecision(
            id, personId, course.Scheme.Id, course.Hash, decider, decidedOn, zone, Certification.Decisions.Decide(file, decider, decidedOn));
        var kept = await records.KeepAsync(made, now, cancellation);
        return kept.IsKept(problems) ? made : null;
    }
}
