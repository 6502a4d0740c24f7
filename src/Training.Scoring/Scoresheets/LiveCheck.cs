using System.Globalization;
using Training.Courses;

namespace Training.Scoring;

/// <summary>Finds what is lacking before a live snake may be used. Rule: docs/rules.md, "Practicals".</summary>
internal sealed class LiveCheck(Scoresheet sheet, ScoresheetContext context, ICollection<Problem> problems)
{
    public void Run()
    {
        switch (sheet.Subject)
        {
            case Subject.Model:
                if (sheet.Live is not null) Report(ScoresheetProblems.LiveConditionsOnModel, nameof(sheet.Live));
                break;
            case Subject.Live:
                if (sheet.Live is null) Report(ScoresheetProblems.LiveConditionsMissing, nameof(sheet.Live));
                else CheckConditions(sheet.Live);
                break;
        }
    }

    private void CheckConditions(LiveConditions live)
    {
        if (string.IsNullOrWhiteSpace(live.PermitNumber)) Report(ScoresheetProblems.PermitNumberMissing, nameof(live.PermitNumber));
        if (live.PermitNumber.Length > ScoresheetGrader.GreatestPermitNumberLength)
        {
            Report(ScoresheetProblems.PermitNumberTooLong, nameof(live.PermitNumber),
                live.PermitNumber.Length.ToString(CultureInfo.InvariantCulture),
                ScoresheetGrader.GreatestPermitNumberLength.ToString(CultureInfo.InvariantCulture));
        }

        CheckBitePlan(live.BitePlanCheckedOn);
        var testedBefore = sheet.SignedAt - live.CommunicationsTestedAt;
        if (testedBefore < TimeSpan.Zero || testedBefore > ScoresheetGrader.CommunicationsTestGreatestAge)
        {
            Report(ScoresheetProblems.CommunicationsNotTested, nameof(live.CommunicationsTestedAt));
        }

        if (live.WatcherId == Guid.Empty) Report(ScoresheetProblems.WatcherMissing, nameof(live.WatcherId));
        else if (live.WatcherId == sheet.CandidateId || live.WatcherId == sheet.InstructorId)
        {
            Report(ScoresheetProblems.WatcherTakesPart, nameof(live.WatcherId));
        }

        CheckModelPass(live.ModelPassId);
    }

    private void CheckBitePlan(DateOnly checkedOn)
    {
        var earliest = ScoresheetGrader.BitePlanGreatestAge.Before(context.SignedOn);
        if (checkedOn > context.SignedOn)
        {
            Report(ScoresheetProblems.BitePlanInFuture, nameof(LiveConditions.BitePlanCheckedOn), Text(checkedOn), Text(context.SignedOn));
        }
        else if (checkedOn < earliest)
        {
            Report(ScoresheetProblems.BitePlanTooOld, nameof(LiveConditions.BitePlanCheckedOn), Text(checkedOn), Text(earliest));
        }
    }

    private void CheckModelPass(Guid id)
    {
        const string Part = nameof(LiveConditions.ModelPassId);
        var name = id.ToString("D", CultureInfo.InvariantCulture);
        var pass = context.ModelPass;
        if (pass is null || pass.Id != id)
        {
            Report(ScoresheetProblems.ModelPassUnknown, Part, name);
            return;
        }

        if (pass.CandidateId != sheet.CandidateId) Report(ScoresheetProblems.ModelPassOfAnother, Part, name);
        if (pass.ChecklistId != sheet.ChecklistId) Report(ScoresheetProblems.ModelPassOnAnotherChecklist, Part, name, pass.ChecklistId);
        if (pass.SignedAt >= sheet.SignedAt) Report(ScoresheetProblems.ModelPassNotEarlier, Part, name);
    }

    private static string Text(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private void Report(string code, string part, params string[] arguments) => problems.Add(new(code, Place.Of(part), arguments));
}
