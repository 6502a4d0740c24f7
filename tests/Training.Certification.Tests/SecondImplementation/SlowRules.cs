using Training.Courses;
using Training.Scoring;

namespace Training.Certification.Tests;

/// <summary>
/// The rules of docs/rules.md a second time, slow and obvious: it walks through the days one by one, keeps what has happened so far,
/// and shares no arithmetic with the product.
/// </summary>
internal static class SlowRules
{
    /// <summary>What is known at the end of one day.</summary>
    public readonly record struct DayState(
        DateOnly Day, Standing? Standing, Period? Period, DateOnly? SuspendedFrom, bool IsWithdrawalDay);

    /// <summary>Every day from the first event through a day.</summary>
    public static List<DayState> Walk(HeldCertification held, DateOnly through)
    {
        var first = held.Periods[0].StartsOn;
        foreach (var suspension in held.Suspensions) first = suspension.From < first ? suspension.From : first;
        foreach (var withdrawal in held.Withdrawals) first = withdrawal.On < first ? withdrawal.On : first;

        Period? period = null;
        var windowOpensOn = DateOnly.MaxValue;
        var isWithdrawn = false;
        var open = new List<Suspension>();
        var days = new List<DayState>(2000);
        Period[] periods = [.. held.Periods];
        Suspension[] suspensions = [.. held.Suspensions];
        Withdrawal[] withdrawals = [.. held.Withdrawals];
        for (var day = first; day <= through; day = day.AddDays(1))
        {
            foreach (var starting in periods)
            {
                if (starting.StartsOn != day) continue;
                period = starting;
                windowOpensOn = Shift(period.ExpiresOn, period.Terms.Window, -1);
                isWithdrawn = false;
            }

            var isWithdrawalDay = false;
            foreach (var withdrawal in withdrawals) isWithdrawalDay |= withdrawal.On == day;
            isWithdrawn |= isWithdrawalDay;
            foreach (var suspension in suspensions)
            {
                if (suspension.From == day) open.Add(suspension);
            }

            Standing? standing = null;
            if (period is not null)
            {
                standing = Standing.Current;
                if (!(day < windowOpensOn)) standing = Standing.RenewalDue;
                if (!(day <= period.ExpiresOn)) standing = Standing.Lapsed;
                if (open.Count != 0) standing = Standing.Suspended;
                if (isWithdrawn) standing = Standing.Withdrawn;
            }

            DateOnly? suspendedFrom = open.Count == 0 ? null : open[0].From;
            days.Add(new(day, standing, period, suspendedFrom, isWithdrawalDay));
            if (isWithdrawalDay) open.Clear();
            for (var i = open.Count - 1; i >= 0; i--)
            {
                if (open[i].Reinstatement?.On == day) open.RemoveAt(i);
            }
        }

        return days;
    }

    /// <summary>The decision, told by <see cref="Told"/>.</summary>
    public static string Decide(CaseFile file, Decider decider, DateOnly on)
    {
        var own = file.Held.SingleOrDefault(held => held.SchemeId == file.Scheme.Id);
        var today = own is null ? default : Walk(own, on)[^1];
        var old = today.Period;
        var inGrace = old is not null && on <= Shift(old.ExpiresOn, old.Terms.Grace, 1);
        var isRenewal = inGrace && today.Standing != Standing.Withdrawn;
        var opensOn = old is null ? on : Shift(old.ExpiresOn, old.Terms.Window, -1);

        var reasons = new List<DecisionReason>();
        if (file.Scheme.EffectiveFrom > on) reasons.Add(new DecisionReason.RulesNotInForce(file.Scheme.EffectiveFrom));
        if (today.SuspendedFrom is { } from) reasons.Add(new DecisionReason.WhileSuspended(from));
        if (today.IsWithdrawalDay) reasons.Add(new DecisionReason.OnDayOfWithdrawal(on));
        var isTooEarly = isRenewal && opensOn > on;
        if (isTooEarly) reasons.Add(new DecisionReason.TooEarly(opensOn));

        var restsOn = new List<Evidence>();
        if (!isTooEarly)
        {
            foreach (var requirement in isRenewal ? file.Scheme.Renewal : file.Scheme.Grant)
            {
                var earliest = isRenewal ? opensOn : DateOnly.MinValue;
                if (requirement is Requirement.Practised practised) restsOn.AddRange(AskPractice(file, decider, on, practised, reasons));
                else if (Ask(file, decider, on, earliest, requirement, reasons) is { } evidence) restsOn.Add(evidence);
            }
        }

        AskDecider(file, decider, on, restsOn, reasons);
        if (reasons.Count != 0) return Told.NotYet(isRenewal ? Route.Renewal : Route.Grant, reasons);

        var exceptions =
            from sheet in restsOn.OfType<Evidence.OfPractical>().Distinct()
            where TeachingDaysThatBind(file, sheet).Count != 0
            select new SeparationException(sheet.ResultId, sheet.ScorerId, sheet.SeparationReason!); // granted: it has one
        var keepsAnniversary = isRenewal && on <= old!.ExpiresOn; // a renewal renews one
        var expiresOn = Shift(keepsAnniversary ? old!.ExpiresOn : on, file.Scheme.Terms.Validity, 1); // as above
        var period = new Period(own is null ? 1 : own.Periods.Max(p => p.Number) + 1, on, on, expiresOn, file.Scheme.Terms);
        return Told.Granted(isRenewal ? Route.Renewal : Route.Grant, period, restsOn.Select(e => e.ResultId).Distinct(), exceptions);
    }

    /// <summary>Walks back from the day and stops at the first day with a result that nothing speaks against.</summary>
    private static Evidence? Ask(
        CaseFile file, Decider decider, DateOnly on, DateOnly earliest, Requirement requirement, List<DecisionReason> reasons)
    {
        if (requirement is Requirement.Holds(var schemeId))
        {
            var other = file.Held.SingleOrDefault(held => held.SchemeId == schemeId);
            List<DayState> days = other is null ? [] : Walk(other, on);
            var standing = days.Count == 0 ? null : days[^1].Standing;
            if (standing is not (Standing.Current or Standing.RenewalDue)) reasons.Add(new DecisionReason.NotHeld(schemeId, standing));
            return null;
        }

        var all = file.Evidence.Where(e => Answers(e, requirement)).OrderBy(e => e.ResultId).ToList();
        var age = requirement is Requirement.PassedQuiz quiz ? quiz.GreatestAge : ((Requirement.PassedPractical)requirement).GreatestAge;
        Evidence? latest = null, latestPass = null, second = null, third = null;
        var first = all.Select(e => e.On).DefaultIfEmpty(DateOnly.MaxValue).Min();
        for (var day = on; day >= first; day = day.AddDays(-1))
        {
            foreach (var evidence in all)
            {
                if (evidence.On != day) continue;
                latest ??= evidence;
                if (!Passes(evidence)) continue;
                latestPass ??= evidence;
                if (day < earliest || Shift(on, age, -1) > day) continue;
                var hindrances = Hindrances(file, on, requirement, evidence).Count + (IsOwnOf(file, decider, evidence) ? 1 : 0);
                var needsException = evidence is Evidence.OfPractical sheet && TeachingDaysThatBind(file, sheet).Count != 0;
                if (hindrances == 0 && !needsException) return evidence;
                if (hindrances == 0) second ??= evidence;
                else third ??= evidence;
            }
        }

        if (latest is null) reasons.Add(new DecisionReason.Missing(requirement));
        else if (latestPass is null) reasons.Add(new DecisionReason.NotPassed(requirement, latest.ResultId));
        else if (second is not null) return second;
        else if (third is not null) reasons.AddRange(Hindrances(file, on, requirement, third));
        else
        {
            var last = latestPass.On;
            while (Shift(last.AddDays(1), age, -1) <= latestPass.On) last = last.AddDays(1);
            if (last < on) reasons.Add(new DecisionReason.TooOld(requirement, latestPass.ResultId, last));
            if (latestPass.On < earliest) reasons.Add(new DecisionReason.BeforeWindow(requirement, latestPass.ResultId, earliest));
        }

        return third;
    }

    /// <summary>Walks back through the span and notes each try at its first sheet; then takes what needs nothing, what needs an exception, the decider's own.</summary>
    private static List<Evidence> AskPractice(
        CaseFile file, Decider decider, DateOnly on, Requirement.Practised practised, List<DecisionReason> reasons)
    {
        var tries = new List<List<Evidence.OfPractical>>();
        var sheets = file.Evidence.OfType<Evidence.OfPractical>().Where(sheet => sheet.ChecklistId == practised.ChecklistId && sheet.Subject == Subject.Model && Passes(sheet))
            .OrderBy(sheet => sheet.ResultId).ToList();
        for (var day = on; day >= Shift(on, practised.Within, -1); day = day.AddDays(-1))
        {
            foreach (var sheet in sheets.Where(sheet => sheet.On == day))
            {
                var same = tries.Find(one => one[0].ClassId == sheet.ClassId && one[0].Try == sheet.Try);
                if (same is null) tries.Add([sheet]);
                else same.Add(sheet);
            }
        }

        List<DecisionReason> Against(Evidence.OfPractical sheet) => Hindrances(file, on, practised, sheet);
        bool IsPlain(Evidence.OfPractical sheet) => Against(sheet).Count == 0 && !IsOwnOf(file, decider, sheet) && TeachingDaysThatBind(file, sheet).Count == 0;
        bool IsExcepted(Evidence.OfPractical sheet) => Against(sheet).Count == 0 && !IsOwnOf(file, decider, sheet) && TeachingDaysThatBind(file, sheet).Count != 0;
        var best = tries.ConvertAll(one => one.Find(IsPlain) ?? one.Find(IsExcepted) ?? one[0]);
        var good = best.Where(IsPlain).Concat(best.Where(IsExcepted)).Concat(best.Where(sheet => Against(sheet).Count == 0 && IsOwnOf(file, decider, sheet))).ToList();
        if (good.Count >= practised.Times) return [.. good.Take(practised.Times)];
        var missing = practised.Times - good.Count;
        var taught = best.Where(sheet => Against(sheet) is [DecisionReason.ScorerTaught]).Take(missing).ToList();
        if (taught.Count < missing)
        {
            reasons.Add(new DecisionReason.PractisedTooLittle(practised, good.Count));
            return [];
        }

        foreach (var sheet in taught) reasons.AddRange(Against(sheet));
        return [.. good, .. taught];
    }

    private static void AskDecider(
        CaseFile file, Decider decider, DateOnly on, List<Evidence> restsOn, List<DecisionReason> reasons)
    {
        if (decider is Decider.Lead(var lead))
        {
            if (lead == file.PersonId) reasons.Add(new DecisionReason.DeciderNotIndependent(lead, Hat.Candidate));
            var taught = file.TaughtBy.Where(t => t.InstructorId == lead).Select(t => t.On).DefaultIfEmpty(DateOnly.MaxValue).Min();
            if (KeepsHatsApart(file) && taught <= on) reasons.Add(new DecisionReason.DeciderNotIndependent(lead, Hat.Taught));
            if (restsOn.Exists(e => IsOwnOf(file, decider, e))) reasons.Add(new DecisionReason.DeciderNotIndependent(lead, Hat.Scored));
        }
        else if (file.Scheme.Kind == SchemeKind.Certification)
        {
            reasons.Add(new DecisionReason.LeadRequired());
        }
    }

    private static bool KeepsHatsApart(CaseFile file) => file.Scheme.Separation == Separation.TeachScoreDecide;

    private static bool IsOwnOf(CaseFile file, Decider decider, Evidence evidence) =>
        KeepsHatsApart(file) && decider is Decider.Lead(var lead) && evidence is Evidence.OfPractical sheet && sheet.ScorerId == lead;

    private static List<DecisionReason> Hindrances(CaseFile file, DateOnly on, Requirement requirement, Evidence evidence)
    {
        if (evidence is not Evidence.OfPractical sheet) return [];
        var hindrances = new List<DecisionReason>();
        foreach (var other in file.Evidence.OrderBy(e => e.ResultId))
        {
            if (hindrances.Count != 0 || other is not Evidence.OfPractical { Outcome: PracticalOutcome.Failed } failed || failed.On > on) continue;
            var asTheOther = sheet with
            {
                ResultId = failed.ResultId, On = failed.On, Outcome = failed.Outcome, ScorerId = failed.ScorerId, SeparationReason = failed.SeparationReason,
            };
            if (asTheOther == failed) hindrances.Add(new DecisionReason.ScorersDisagree(requirement, sheet.ResultId, failed.ResultId));
        }

        if (sheet.ScorerId == file.PersonId) hindrances.Add(new DecisionReason.ScoredThemselves(requirement, sheet.ResultId));
        var days = TeachingDaysThatBind(file, sheet);
        if (days.Count != 0 && (sheet.SeparationReason ?? "").Trim().Length == 0)
            hindrances.Add(new DecisionReason.ScorerTaught(requirement, sheet.ResultId, sheet.ScorerId, days.Max()));
        return hindrances;
    }

    /// <summary>Days on or before the sheet's whose second birthday lies after it; 29 February's counts as past the 28th.</summary>
    private static List<DateOnly> TeachingDaysThatBind(CaseFile file, Evidence.OfPractical sheet) => !KeepsHatsApart(file)
        ? []
        : [
            .. from teaching in file.TaughtBy
               where teaching.InstructorId == sheet.ScorerId && teaching.On <= sheet.On
               where (teaching.On.Year + 2, teaching.On.Month, teaching.On.Day).CompareTo((sheet.On.Year, sheet.On.Month, sheet.On.Day)) > 0
               select teaching.On,
        ];

    private static bool Answers(Evidence evidence, Requirement requirement) => (evidence, requirement) switch
    {
        (Evidence.OfQuiz sitting, Requirement.PassedQuiz(var quizId, _)) => sitting.QuizId == quizId,
        (Evidence.OfPractical sheet, Requirement.PassedPractical(var checklistId, var subject, _)) =>
            (sheet.ChecklistId, sheet.Subject) == (checklistId, subject),
        _ => false,
    };

    private static bool Passes(Evidence evidence) =>
        evidence is Evidence.OfQuiz { IsPassed: true } or Evidence.OfPractical { Outcome: PracticalOutcome.Passed };

    /// <summary>Adds (1) or takes away (-1) a duration by hand: months are counted, then the day steps back until the month has it.</summary>
    public static DateOnly Shift(DateOnly from, Duration duration, int sign)
    {
        if (duration.Unit == DurationUnit.Days) return DateOnly.FromDayNumber(from.DayNumber + (sign * duration.Count));
        var months = (from.Year * 12) + from.Month - 1 + (sign * duration.Count * (duration.Unit == DurationUnit.Years ? 12 : 1));
        var (year, month) = (months / 12, (months % 12) + 1);
        var isLeap = year % 400 == 0 || (year % 4 == 0 && year % 100 != 0);
        int[] lengths = [31, isLeap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
        return new(year, month, Math.Min(from.Day, lengths[month - 1]));
    }
}
