using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Features.People;

namespace Training.Web.Features.Decisions;

/// <summary>A case as it stands before a lead decides it.</summary>
/// <param name="Course">Whose scheme holds the rules in force.</param>
/// <param name="File">Everything that the decision may rest on.</param>
/// <param name="Zone">IANA zone of the decision.</param>
/// <param name="On">Day of the decision.</param>
/// <param name="Lead">Who would decide.</param>
/// <param name="Decision">What the rules say if this lead decides.</param>
public sealed record DecisionCase(Course Course, CaseFile File, string Zone, DateOnly On, Decider.Lead Lead, Decision Decision)
{
    /// <summary>The hats that are in this lead's way.</summary>
    public IReadOnlyList<DecisionReason> Hindrances => Decision is Decision.NotYet notYet
        ? [.. notYet.Reasons.Where(reason => reason is DecisionReason.DeciderNotIndependent)]
        : [];

    /// <summary>The case, or null where there is no such person.</summary>
    public static async Task<DecisionCase?> FindAsync(
        RecordsContext records, Guid personId, Course course, Guid leadId, string providerZone, DateTimeOffset now, CancellationToken cancellation)
    {
        if (await records.FindCaseFileAsync(personId, course.Scheme, cancellation) is not { } file) return null;
        var day = await PersonDay.OfAsync(records, personId, providerZone, now, cancellation);
        var last = file.Held.FirstOrDefault(held => held.SchemeId == course.Scheme.Id)?.Periods[^1].DecidedOn;
        // Whoever moved to a site further west may stand a day before their last decision; none is made for a day before it.
        var on = last > day.Today ? last.Value : day.Today;
        var lead = new Decider.Lead(leadId);
        return new(course, file, day.Zone, on, lead, Certification.Decisions.Decide(file, lead, on));
    }

    /// <summary>What is kept where the lead grants; only where the rules say so.</summary>
    public MadeDecision Grant(Guid id) => Make(id, Decision);

    /// <summary>What is kept where the lead refuses.</summary>
    public MadeDecision Refuse(Guid id, string reason) => Make(id, Certification.Decisions.Refuse(File, Lead, On, reason));

    private MadeDecision Make(Guid id, Decision decision) =>
        new(id, File.PersonId, Course.Scheme.Id, Course.Hash, Lead, On, Zone, decision);
}
