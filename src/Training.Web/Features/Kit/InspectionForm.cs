using System.Globalization;
using Training.Courses;
using Training.Records;

namespace Training.Web.Features.Kit;

/// <summary>What an inspection of a piece of kit posts. Texts, so that everything typed can be shown again.</summary>
public sealed class InspectionForm
{
    private const string Day = "yyyy-MM-dd";

    /// <summary>Made with the form: the same post again is the same inspection.</summary>
    public Guid Id { get; init; }

    /// <summary>yyyy-MM-dd.</summary>
    public string? InspectedOn { get; init; }

    /// <summary><c>fit</c> or <c>unfit</c>; nothing is preset.</summary>
    public string? Finding { get; init; }

    /// <summary>yyyy-MM-dd; asked where it is fit.</summary>
    public string? NextDueOn { get; init; }

    /// <summary>Asked where it is not fit.</summary>
    public string? Reason { get; init; }

    /// <summary>A date as the field holds it.</summary>
    public static string Text(DateOnly date) => date.ToString(Day, CultureInfo.InvariantCulture);

    /// <summary>The inspection, or null where something is to be mended.</summary>
    public KitInspectionRecord? Read(RegisteredKit kit, Guid inspectorId, DateOnly today, DateTimeOffset now, ICollection<Problem> problems)
    {
        var before = problems.Count;
        void Report(string field, string code, params IReadOnlyList<string> arguments) => problems.Add(new(code, Place.Of(field), arguments));
        if (kit.Retirement is { } gone) Report("kit", KitFormProblems.AlreadyOutOfUse, kit.Piece.Label, Text(gone.RetiredOn));
        if (!DateOnly.TryParseExact(InspectedOn, Day, CultureInfo.InvariantCulture, DateTimeStyles.None, out var on))
            Report(nameof(InspectedOn), KitFormProblems.InspectedOnUnreadable);
        else if (on > today) Report(nameof(InspectedOn), KitFormProblems.InspectedInFuture, Text(on), Text(today));

        DateOnly? due = null;
        string? reason = null;
        switch (Finding)
        {
            case "fit":
                if (!DateOnly.TryParseExact(NextDueOn, Day, CultureInfo.InvariantCulture, DateTimeStyles.None, out var next))
                    Report(nameof(NextDueOn), KitFormProblems.NextDueUnreadable);
                else if (next <= on) Report(nameof(NextDueOn), KitFormProblems.NextDueNotLater, Text(next), Text(on));
                due = next;
                break;
            case "unfit":
                reason = Reasons.Read(Reason, nameof(Reason), problems);
                break;
            default:
                Report(nameof(Finding), KitFormProblems.FindingMissing);
                break;
        }

        return problems.Count > before ? null : new KitInspectionRecord
        {
            Id = Id, PieceId = kit.Piece.Id, InspectorId = inspectorId, InspectedOn = on, IsFit = due is not null, Reason = reason, NextDueOn = due, KeptAt = now,
        };
    }
}

/// <summary>What taking a piece of kit out of use posts.</summary>
public sealed class RetirementForm
{
    /// <summary>Why.</summary>
    public string? Why { get; init; }

    /// <summary>The retirement, or null where something is to be mended.</summary>
    public KitRetirementRecord? Read(Guid pieceId, Guid personId, DateOnly today, DateTimeOffset now, ICollection<Problem> problems)
    {
        var before = problems.Count;
        var reason = Reasons.Read(Why, nameof(Why), problems);
        return problems.Count > before ? null : new KitRetirementRecord { PieceId = pieceId, TakenById = personId, RetiredOn = today, Reason = reason, KeptAt = now };
    }
}

/// <summary>Reads a reason that must be given.</summary>
internal static class Reasons
{
    /// <summary>Trimmed; blank or too long is a problem at the field.</summary>
    public static string Read(string? text, string field, ICollection<Problem> problems)
    {
        var reason = text?.Trim() ?? "";
        if (reason.Length == 0) problems.Add(new(KitFormProblems.ReasonMissing, Place.Of(field)));
        if (reason.Length > Bounds.Reason)
        {
            problems.Add(new(
                KitFormProblems.ReasonTooLong, Place.Of(field), reason.Length.ToString(CultureInfo.InvariantCulture),
                Bounds.Reason.ToString(CultureInfo.InvariantCulture)));
        }

        return reason;
    }
}
