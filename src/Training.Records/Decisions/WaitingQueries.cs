using System.Diagnostics;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Scoring;

namespace Training.Records;

/// <summary>A certification that waits for a lead's decision.</summary>
/// <param name="PersonId">Whose.</param>
/// <param name="SchemeId">Under which scheme.</param>
/// <param name="Since">Day of the newest passed evidence: from then on nothing but the lead was missing.</param>
public sealed record WaitingDecision(Guid PersonId, string SchemeId, DateOnly Since);

/// <summary>A suspension that nobody has settled yet.</summary>
public sealed record OpenSuspension(Guid Id, Guid PersonId, string SchemeId, DateOnly StartsOn, DateOnly DeadlineOn, Guid LeadId, string Reason);

/// <summary>A withdrawal that waits for a second lead.</summary>
public sealed record OpenProposal(Guid Id, Guid PersonId, string SchemeId, DateOnly ProposedOn, Guid LeadId, string Reason);

/// <summary>Two contents came where one belongs; this is the one that counts for nothing.</summary>
/// <param name="FormId">Id of the sitting or sheet.</param>
/// <param name="PersonId">Whose result it would be.</param>
/// <param name="Id">The quiz or checklist.</param>
/// <param name="On">The day of the sitting or sheet.</param>
/// <param name="IsScoresheet">A scoresheet, or else a sitting.</param>
/// <param name="KeptAt">When the disputed content came, UTC.</param>
public sealed record DisputedCopy(Guid FormId, Guid PersonId, string Id, DateOnly On, bool IsScoresheet, DateTimeOffset KeptAt);

/// <summary>Finds what waits for a programme lead. Every list is bounded.</summary>
public static class WaitingQueries
{
    /// <summary>Most rows of each list.</summary>
    public const int Most = PersonFileQueries.MostFiles;

    /// <summary>
    /// Whose decision waits under one scheme, longest first. The records find those who hold every passed result of one route, something
    /// of it newer than the last grant or refusal; the rules then decide for each. At most <see cref="Most"/> cases are looked at.
    /// </summary>
    /// <param name="records">Where from.</param>
    /// <param name="scheme">The rules in force; a certificate of training never waits.</param>
    /// <param name="today">The day.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyList<WaitingDecision>> WaitingDecisionsAsync(
        this RecordsContext records, Scheme scheme, DateOnly today, CancellationToken cancellation)
    {
        if (scheme.Kind != SchemeKind.Certification) return [];
        var candidates = await records.Candidates(scheme, scheme.Grant, today).Union(records.Candidates(scheme, scheme.Renewal, today))
            .OrderBy(id => id).Take(Most).ToListAsync(cancellation);
        var files = await records.PersonFilesAsync(candidates, cancellation);
        return
        [
            .. files.Values.Select(person => person.Under(scheme))
                .Where(file => !IsDecidedLater(file, today) && Decisions.AwaitsLead(file, today))
                .Select(file => new WaitingDecision(file.PersonId, scheme.Id, NewestPass(file, today)))
                .OrderBy(one => one.Since).ThenBy(one => one.PersonId),
        ];
    }

    /// <summary>Suspensions without reinstatement and not settled by a withdrawal, the nearest deadline first.</summary>
    public static async Task<IReadOnlyList<OpenSuspension>> OpenSuspensionsAsync(this RecordsContext records, CancellationToken cancellation) =>
        await (from row in records.Suspensions
               where !records.Reinstatements.Any(end => end.SuspensionId == row.Id)
                   && !records.Withdrawals.Any(end =>
                       end.PersonId == row.PersonId && end.SchemeId == row.SchemeId && row.StartsOn <= end.WithdrawnOn)
               orderby row.DeadlineOn, row.Id
               select new OpenSuspension(row.Id, row.PersonId, row.SchemeId, row.StartsOn, row.DeadlineOn, row.LeadId, row.Reason))
            .Take(Most).ToListAsync(cancellation);

    /// <summary>Withdrawals that wait for a second lead, the oldest first. A proposal about a period that was followed by another is not among them.</summary>
    public static async Task<IReadOnlyList<OpenProposal>> OpenProposalsAsync(this RecordsContext records, CancellationToken cancellation) =>
        await records.OpenProposals().OldestFirst().ToListAsync(cancellation);

    /// <summary>The open proposals about one person.</summary>
    public static async Task<IReadOnlyList<OpenProposal>> OpenProposalsAsync(
        this RecordsContext records, Guid personId, CancellationToken cancellation) =>
        await records.OpenProposals().Where(row => row.PersonId == personId).OldestFirst().ToListAsync(cancellation);

    /// <summary>Sittings and scoresheets that came a second time with other content, the newest first.</summary>
    public static async Task<IReadOnlyList<DisputedCopy>> DisputedCopiesAsync(this RecordsContext records, CancellationToken cancellation)
    {
        var sheets = await records.Scoresheets.Where(sheet => sheet.Copy > 1).OrderByDescending(sheet => sheet.KeptAt).Take(Most)
            .Select(sheet => new DisputedCopy(sheet.FormId, sheet.CandidateId, sheet.ChecklistId, sheet.ScoredOn, true, sheet.KeptAt))
            .ToListAsync(cancellation);
        var sittings = await records.Sittings.Where(sitting => sitting.Copy > 1).OrderByDescending(sitting => sitting.KeptAt).Take(Most)
            .Select(sitting => new DisputedCopy(sitting.FormId, sitting.PersonId, sitting.QuizId, sitting.TakenOn, false, sitting.KeptAt))
            .ToListAsync(cancellation);
        return [.. sheets.Concat(sittings).OrderByDescending(copy => copy.KeptAt).Take(Most)];
    }

    private static IQueryable<Guid> Candidates(
        this RecordsContext records, Scheme scheme, IReadOnlyList<Requirement> requirements, DateOnly today)
    {
        var people = records.Persons.AsNoTracking();
        foreach (var requirement in requirements)
        {
            people = requirement switch
            {
                Requirement.PassedQuiz quiz => records.WithPass(people, quiz, today),
                Requirement.PassedPractical practical => records.WithPass(people, practical, today),
                Requirement.Practised practised => records.WithPass(
                    people, new Requirement.PassedPractical(practised.ChecklistId, Subject.Model, practised.Within), today),
                // Standing is worked out by the rules, never by a query.
                Requirement.Holds => people,
                _ => throw new UnreachableException(),
            };
        }

        return records.WithNews(people, scheme.Id, requirements).Select(person => person.Id);
    }

    // Month arithmetic does not belong in a query: the oldest day that counts is worked out here.
    private static IQueryable<Person> WithPass(
        this RecordsContext records, IQueryable<Person> people, Requirement.PassedQuiz quiz, DateOnly today)
    {
        var oldest = quiz.GreatestAge.Before(today);
        return people.Where(person => records.CountingSittings().Any(sitting =>
            sitting.PersonId == person.Id && sitting.QuizId == quiz.QuizId
            && sitting.TakenOn >= oldest && sitting.TakenOn <= today
            && records.SittingResults.Any(result => result.SittingId == sitting.Id && result.IsPassed)));
    }

    private static IQueryable<Person> WithPass(
        this RecordsContext records, IQueryable<Person> people, Requirement.PassedPractical practical, DateOnly today)
    {
        var oldest = practical.GreatestAge.Before(today);
        return people.Where(person => records.CountingScoresheets().Any(sheet =>
            sheet.CandidateId == person.Id && sheet.ChecklistId == practical.ChecklistId && sheet.Subject == practical.Subject
            && sheet.ScoredOn >= oldest && sheet.ScoredOn <= today
            && records.ScoresheetResults.Any(result => result.ScoresheetId == sheet.Id && result.Outcome == PracticalOutcome.Passed)));
    }

    /// <summary>Those of whom a passed result came after the last grant or refusal, or an appeal asked since then for a decision made anew.</summary>
    private static IQueryable<Person> WithNews(
        this RecordsContext records, IQueryable<Person> people, string schemeId, IReadOnlyList<Requirement> requirements)
    {
        var quizzes = requirements.OfType<Requirement.PassedQuiz>().Select(quiz => quiz.QuizId).ToList();
        var checklists = requirements.OfType<Requirement.PassedPractical>().Select(practical => practical.ChecklistId)
            .Concat(requirements.OfType<Requirement.Practised>().Select(practised => practised.ChecklistId)).ToList();
        return people.Where(person =>
            records.CountingSittings().Any(sitting =>
                sitting.PersonId == person.Id && quizzes.Contains(sitting.QuizId)
                && records.SittingResults.Any(result => result.SittingId == sitting.Id && result.IsPassed)
                && !records.Decisions.Any(decision =>
                    decision.PersonId == person.Id && decision.SchemeId == schemeId && decision.Outcome != DecisionOutcome.NotYet
                    && decision.KeptAt >= sitting.KeptAt))
            || records.CountingScoresheets().Any(sheet =>
                sheet.CandidateId == person.Id && checklists.Contains(sheet.ChecklistId)
                && records.ScoresheetResults.Any(result => result.ScoresheetId == sheet.Id && result.Outcome == PracticalOutcome.Passed)
                && !records.Decisions.Any(decision =>
                    decision.PersonId == person.Id && decision.SchemeId == schemeId && decision.Outcome != DecisionOutcome.NotYet
                    && decision.KeptAt >= sheet.KeptAt))
            || records.AppealDecisions.Any(end =>
                end.Remedy == AppealRemedy.DecideAnew
                && records.Appeals.Any(appeal => appeal.Id == end.AppealId && appeal.PersonId == person.Id
                    && records.Decisions.Any(contested => contested.Id == appeal.DecisionId && contested.SchemeId == schemeId))
                && !records.Decisions.Any(decision =>
                    decision.PersonId == person.Id && decision.SchemeId == schemeId && decision.Outcome != DecisionOutcome.NotYet
                    && decision.KeptAt >= end.KeptAt)));
    }

    private static IQueryable<WithdrawalProposalRecord> OpenProposals(this RecordsContext records) =>
        records.WithdrawalProposals.AsNoTracking().Where(row =>
            !records.WithdrawalProposalEnds.Any(end => end.ProposalId == row.Id)
            && !records.Withdrawals.Any(end =>
                end.PersonId == row.PersonId && end.SchemeId == row.SchemeId && end.PeriodNumber == row.PeriodNumber)
            && !records.Periods.Any(later =>
                later.PersonId == row.PersonId && later.SchemeId == row.SchemeId && later.Number > row.PeriodNumber));

    private static IQueryable<OpenProposal> OldestFirst(this IQueryable<WithdrawalProposalRecord> proposals) =>
        proposals.OrderBy(row => row.ProposedOn).ThenBy(row => row.Id).Take(Most)
            .Select(row => new OpenProposal(row.Id, row.PersonId, row.SchemeId, row.ProposedOn, row.LeadId, row.Reason));

    // Another node, or a site east of here, may have decided for a day that has not begun in this zone.
    private static bool IsDecidedLater(CaseFile file, DateOnly today) =>
        file.Held.Any(held => held.SchemeId == file.Scheme.Id && held.Periods[^1].DecidedOn > today);

    private static DateOnly NewestPass(CaseFile file, DateOnly today) => file.Evidence
        .Where(evidence => evidence.On <= today && file.Scheme.Grant.Concat(file.Scheme.Renewal).Any(requirement => Answers(evidence, requirement)))
        .Max(evidence => evidence.On);

    private static bool Answers(Evidence evidence, Requirement requirement) => (evidence, requirement) switch
    {
        (Evidence.OfQuiz { IsPassed: true } sitting, Requirement.PassedQuiz quiz) => sitting.QuizId == quiz.QuizId,
        (Evidence.OfPractical { Outcome: PracticalOutcome.Passed } sheet, Requirement.PassedPractical practical) =>
            sheet.ChecklistId == practical.ChecklistId && sheet.Subject == practical.Subject,
        (Evidence.OfPractical { Outcome: PracticalOutcome.Passed, Subject: Subject.Model } sheet, Requirement.Practised practised) =>
            sheet.ChecklistId == practised.ChecklistId,
        _ => false,
    };
}
