using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;

namespace Training.Records;

/// <summary>An appeal or complaint as somebody sends it.</summary>
/// <param name="Id">Made by the form.</param>
/// <param name="PersonId">Who appeals.</param>
/// <param name="Matter">What sort of thing is contested.</param>
/// <param name="ContestedId">The form's id of the sitting or sheet, or the decision; the appeal's own id for a complaint.</param>
/// <param name="Words">Why.</param>
/// <param name="EnteredById">In whose session it was written.</param>
/// <param name="ReceivedOn">The day in <paramref name="Zone"/>.</param>
/// <param name="Zone">IANA zone of the provider.</param>
public sealed record NewAppeal(
    Guid Id, Guid PersonId, AppealMatter Matter, Guid ContestedId, string Words, Guid EnteredById, DateOnly ReceivedOn, string Zone);

/// <summary>Keeps appeals and what becomes of them, each step once and with its letter in the same transaction.</summary>
/// <remarks>Rule: docs/rules.md, "Appeals".</remarks>
public static class AppealKeeping
{
    /// <summary>Keeps an appeal. Refused where there is nothing of the kind about the person, or it was contested before.</summary>
    /// <param name="records">Where to.</param>
    /// <param name="appeal">As sent; the same again is one appeal.</param>
    /// <param name="receipt">The mail that says it came, or null where none reaches them.</param>
    /// <param name="now">UTC.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<Kept> KeepAsync(
        this RecordsContext records, NewAppeal appeal, OutgoingMail? receipt, DateTimeOffset now, CancellationToken cancellation)
    {
        if (await records.FindKeptAsync(appeal, cancellation) is { } before) return before;
        if (await records.FindRowAsync(appeal, receipt, now, cancellation) is not { } row)
            return Refuse("contested", RecordsProblems.NothingToContest);
        if (await records.TryInsertAsync(cancellation, [.. RowsOf(receipt), row])) return new Kept.Stored(appeal.Id);
        return await records.FindKeptAsync(appeal, cancellation)
            ?? throw new InvalidOperationException($"Appeal {appeal.Id} was refused although there is none.");
    }

    /// <summary>Keeps that a lead took an appeal up; anybody but the appellant may.</summary>
    public static async Task<Kept> TakeUpAsync(
        this RecordsContext records, Guid appealId, Guid leadId, DateOnly on, OutgoingMail? letter, DateTimeOffset now, CancellationToken cancellation)
    {
        if (await records.FindAppealRowAsync(appealId, cancellation) is not { } appeal) return Unknown(appealId);
        if (await records.FindTakeUpAsync(appealId, cancellation) is { } before) return Repeat(before, leadId);
        var problems = new List<Problem>();
        await records.RequireAppointedAsync(leadId, AppointedRole.ProgrammeLead, on, problems, cancellation);
        if (appeal.PersonId == leadId) problems.Add(RecordsProblems.At("lead", RecordsProblems.OwnAppeal));
        if (problems.Count > 0) return new Kept.Refused(problems);
        var row = new AppealTakeUpRecord { AppealId = appealId, LeadId = leadId, TakenUpOn = on, KeptAt = now, MailId = letter?.Id };
        if (await records.TryInsertAsync(cancellation, [.. RowsOf(letter), row])) return new Kept.Stored(appealId);
        return await records.FindTakeUpAsync(appealId, cancellation) is { } first
            ? Repeat(first, leadId)
            : throw new InvalidOperationException($"Taking up appeal {appealId} was refused although nobody did.");
    }

    /// <summary>
    /// Keeps what an appeal came to, with the closing letter and, where that follows, that the result is set aside. Refused, for every
    /// reason, where the lead is not independent. The same again is answered with what is stored.
    /// </summary>
    public static async Task<Kept> DecideAsync(
        this RecordsContext records, AppealDecisionRecord decision, OutgoingMail? letter, CancellationToken cancellation)
    {
        if (await records.FindAppealRowAsync(decision.AppealId, cancellation) is not { } appeal) return Unknown(decision.AppealId);
        if (await records.FindEndAsync(decision.AppealId, cancellation) is { } before) return Repeat(before, decision);
        var problems = new List<Problem>();
        await records.RequireAppointedAsync(decision.LeadId, AppointedRole.ProgrammeLead, decision.DecidedOn, problems, cancellation);
        var file = await records.AppealFileAsync(appeal.PersonId, appeal.DecisionId, cancellation);
        problems.AddRange(AppealIndependence.BondsOf(file, decision.LeadId, decision.DecidedOn).Select(ProblemOf));
        if (await records.FindTakeUpAsync(decision.AppealId, cancellation) is null) problems.Add(RecordsProblems.At("appeal", RecordsProblems.NotTakenUp));
        if (!AppealRemedies.Fit(appeal.Matter, decision.Outcome, decision.Remedy)) problems.Add(RecordsProblems.At("remedy", RecordsProblems.RemedyUnfit));
        if (problems.Count > 0) return new Kept.Refused(problems);

        if (await records.TryInsertAsync(cancellation, [.. RowsOf(letter), decision, .. SetAside(appeal, decision.Remedy)])) return new Kept.Stored(decision.AppealId);
        return await records.FindEndAsync(decision.AppealId, cancellation) is { } first
            ? Repeat(first, decision)
            : throw new InvalidOperationException($"The end of appeal {decision.AppealId} was refused although there is none.");
    }

    /// <summary>Keeps that a lead looked at what had rested on a result that was set aside.</summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, SetAsideLookRecord look, CancellationToken cancellation)
    {
        var personId = await records.Appeals
            .Where(appeal => appeal.Id == look.AppealId && records.AppealDecisions.Any(end => end.AppealId == appeal.Id && end.Remedy == AppealRemedy.SetAside))
            .Select(appeal => (Guid?)appeal.PersonId).SingleOrDefaultAsync(cancellation);
        if (personId is null) return Refuse("appeal", RecordsProblems.NothingSetAside);
        var problems = new List<Problem>();
        await records.RequireAppointedAsync(look.LeadId, AppointedRole.ProgrammeLead, look.LookedOn, problems, cancellation);
        if (personId == look.LeadId) problems.Add(RecordsProblems.At("lead", RecordsProblems.OwnAppeal));
        if (problems.Count > 0) return new Kept.Refused(problems);
        if (await records.TryInsertAsync(cancellation, look)) return new Kept.Stored(look.AppealId);
        var first = await records.SetAsideLooks.AsNoTracking().SingleAsync(row => row.AppealId == look.AppealId, cancellation);
        return (first.LeadId, first.Finding) == (look.LeadId, look.Finding)
            ? new Kept.AlreadyStored(look.AppealId)
            : Refuse("look", RecordsProblems.LookedBefore, Text(first.LookedOn));
    }

    /// <summary>
    /// Keeps the candidate's word to a signed sheet; an objection is an appeal at once, in the same transaction, unless the sheet was
    /// contested before. One word a sheet; the same form again is answered with what is stored.
    /// </summary>
    /// <param name="records">Where to.</param>
    /// <param name="word">As said.</param>
    /// <param name="appeal">The appeal that an objection opens; null for every other word.</param>
    /// <param name="receipt">Its receipt, or null.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<Kept> KeepAsync(
        this RecordsContext records, CandidateWordRecord word, NewAppeal? appeal, OutgoingMail? receipt, CancellationToken cancellation)
    {
        if (await records.FindWordAsync(word.ScoresheetId, cancellation) is { } before) return Repeat(before, word);
        var isContested = appeal is not null && await records.Appeals.AnyAsync(
            other => other.Matter == appeal.Matter && other.ContestedId == appeal.ContestedId, cancellation);
        var row = appeal is null || isContested ? null : await records.FindRowAsync(appeal, receipt, word.KeptAt, cancellation);
        object[] rows = row is null ? [word] : [.. RowsOf(receipt), row, word];
        if (await records.TryInsertAsync(cancellation, rows)) return new Kept.Stored(word.Id);
        return await records.FindWordAsync(word.ScoresheetId, cancellation) is { } first
            ? Repeat(first, word)
            // Another window contested the sheet in this moment: then only the word is missing.
            : await records.TryInsertAsync(cancellation, word) ? new Kept.Stored(word.Id) : Refuse("word", RecordsProblems.WordGiven);
    }

    /// <summary>What a bond is called as a problem.</summary>
    public static Problem ProblemOf(AppealBond bond) => bond switch
    {
        AppealBond.Appellant => RecordsProblems.At("lead", RecordsProblems.OwnAppeal),
        AppealBond.Taught(var on) => RecordsProblems.At("lead", RecordsProblems.TaughtAppellant, Text(on)),
        AppealBond.Scored(var on) => RecordsProblems.At("lead", RecordsProblems.ScoredAppellant, Text(on)),
        AppealBond.Decided => RecordsProblems.At("lead", RecordsProblems.MadeContestedDecision),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static IEnumerable<object> SetAside(AppealRecord appeal, AppealRemedy? remedy)
    {
        if (remedy != AppealRemedy.SetAside) yield break;
        if (appeal.ScoresheetId is { } sheet) yield return new ScoresheetSetAside { ScoresheetId = sheet, AppealId = appeal.Id };
        if (appeal.SittingId is { } sitting) yield return new SittingSetAside { SittingId = sitting, AppealId = appeal.Id };
    }

    private static IEnumerable<object> RowsOf(OutgoingMail? letter) => letter is null ? [] : [letter];

    private static async Task<AppealRecord?> FindRowAsync(
        this RecordsContext records, NewAppeal appeal, OutgoingMail? receipt, DateTimeOffset now, CancellationToken cancellation)
    {
        var (personId, id) = (appeal.PersonId, appeal.ContestedId);
        Guid? sitting = appeal.Matter != AppealMatter.Sitting ? null : await records.Sittings
            .Where(row => row.FormId == id && row.Copy == 1 && row.PersonId == personId).Select(row => (Guid?)row.Id).SingleOrDefaultAsync(cancellation);
        Guid? sheet = appeal.Matter != AppealMatter.Scoresheet ? null : await records.Scoresheets
            .Where(row => row.FormId == id && row.Copy == 1 && row.CandidateId == personId).Select(row => (Guid?)row.Id).SingleOrDefaultAsync(cancellation);
        Guid? decision = appeal.Matter != AppealMatter.Decision ? null : await records.Decisions
            .Where(row => row.Id == id && row.PersonId == personId && row.Outcome != DecisionOutcome.Granted).Select(row => (Guid?)row.Id)
            .SingleOrDefaultAsync(cancellation);
        var isFound = appeal.Matter == AppealMatter.Complaint ? id == appeal.Id : (sitting ?? sheet ?? decision) is not null;
        return !isFound ? null : new()
        {
            Id = appeal.Id, PersonId = personId, Matter = appeal.Matter, ContestedId = id, SittingId = sitting, ScoresheetId = sheet, DecisionId = decision,
            Words = appeal.Words, EnteredById = appeal.EnteredById, ReceivedOn = appeal.ReceivedOn, Zone = appeal.Zone, KeptAt = now, MailId = receipt?.Id,
        };
    }

    private static async Task<Kept?> FindKeptAsync(this RecordsContext records, NewAppeal appeal, CancellationToken cancellation)
    {
        if (await records.FindAppealRowAsync(appeal.Id, cancellation) is { } stored)
        {
            var isSame = (stored.PersonId, stored.Matter, stored.ContestedId, stored.Words) == (appeal.PersonId, appeal.Matter, appeal.ContestedId, appeal.Words);
            return isSame ? new Kept.AlreadyStored(appeal.Id) : Refuse("appeal", RecordsProblems.OtherContent, appeal.Id.ToString());
        }

        var before = await records.Appeals.Where(other => other.Matter == appeal.Matter && other.ContestedId == appeal.ContestedId)
            .Select(other => new { other.PersonId, other.ReceivedOn }).SingleOrDefaultAsync(cancellation);
        // Another person's is not there for this one.
        return before?.PersonId == appeal.PersonId ? Refuse("contested", RecordsProblems.ContestedBefore, Text(before.ReceivedOn)) : null;
    }

    private static Task<AppealRecord?> FindAppealRowAsync(this RecordsContext records, Guid id, CancellationToken cancellation) =>
        records.Appeals.AsNoTracking().SingleOrDefaultAsync(appeal => appeal.Id == id, cancellation);

    private static Task<AppealTakeUpRecord?> FindTakeUpAsync(this RecordsContext records, Guid id, CancellationToken cancellation) =>
        records.AppealTakeUps.AsNoTracking().SingleOrDefaultAsync(row => row.AppealId == id, cancellation);

    private static Task<AppealDecisionRecord?> FindEndAsync(this RecordsContext records, Guid id, CancellationToken cancellation) =>
        records.AppealDecisions.AsNoTracking().SingleOrDefaultAsync(row => row.AppealId == id, cancellation);

    private static Task<CandidateWordRecord?> FindWordAsync(this RecordsContext records, Guid scoresheetId, CancellationToken cancellation) =>
        records.CandidateWords.AsNoTracking().SingleOrDefaultAsync(row => row.ScoresheetId == scoresheetId, cancellation);

    private static Kept Repeat(AppealTakeUpRecord stored, Guid leadId) => stored.LeadId == leadId
        ? new Kept.AlreadyStored(stored.AppealId)
        : Refuse("appeal", RecordsProblems.TakenUpBefore, Text(stored.TakenUpOn));

    private static Kept Repeat(AppealDecisionRecord stored, AppealDecisionRecord again) =>
        (stored.Outcome, stored.Remedy, stored.Reason, stored.LeadId) == (again.Outcome, again.Remedy, again.Reason, again.LeadId)
            ? new Kept.AlreadyStored(stored.AppealId)
            : Refuse("appeal", RecordsProblems.AppealDecidedBefore, Text(stored.DecidedOn));

    private static Kept Repeat(CandidateWordRecord stored, CandidateWordRecord again) =>
        (stored.Id, stored.Word, stored.SignedName, stored.Reason) == (again.Id, again.Word, again.SignedName, again.Reason)
            ? new Kept.AlreadyStored(stored.Id)
            : Refuse("word", RecordsProblems.WordGiven);

    private static Kept.Refused Unknown(Guid id) => Refuse("appeal", RecordsProblems.AppealUnknown, id.ToString());

    private static Kept.Refused Refuse(string part, string code, params IReadOnlyList<string> arguments) => new([RecordsProblems.At(part, code, arguments)]);

    private static string Text(DateOnly day) => day.ToString("O", CultureInfo.InvariantCulture);
}
