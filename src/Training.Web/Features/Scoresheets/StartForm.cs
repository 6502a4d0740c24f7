using System.Globalization;
using Training.Courses;
using Training.Records;
using Training.Scoring;

namespace Training.Web.Features.Scoresheets;

/// <summary>What the start of a scoresheet posts. Texts, so that everything typed can be shown again.</summary>
public sealed class StartForm
{
    /// <summary>Made with the form: the same post again is the same sheet.</summary>
    public Guid Id { get; init; }

    /// <summary>Id of the checklist; left out: the first one of the course.</summary>
    public string? Checklist { get; init; }

    /// <summary><c>model</c> or <c>live</c>.</summary>
    public string? Subject { get; init; }

    /// <summary>Tag of the language in which the instructions are read.</summary>
    public string? Language { get; init; }

    /// <summary>The candidate's identification was looked at.</summary>
    public bool IdentityConfirmed { get; init; }

    /// <summary>The value of a <see cref="SecondScoring"/>; anything else is the next try.</summary>
    public string? Second { get; init; }

    /// <summary>How many tries of others the form offered to score too; null where it did not say.</summary>
    public int? Offered { get; init; }

    /// <summary>Ground, light and weather.</summary>
    public string? Surroundings { get; init; }

    /// <summary>In °C.</summary>
    public string? AirTemperature { get; init; }

    /// <summary>Ids of pieces of the register.</summary>
    public IList<Guid> Kit { get; init; } = [];

    /// <summary>Live only.</summary>
    public string? PermitNumber { get; init; }

    /// <summary>Live only, yyyy-MM-dd.</summary>
    public string? BitePlanCheckedOn { get; init; }

    /// <summary>Live only, yyyy-MM-ddTHH:mm on the site's clock.</summary>
    public string? CommunicationsTestedAt { get; init; }

    /// <summary>Live only.</summary>
    public Guid? WatcherId { get; init; }

    /// <summary>Only where the instructor taught the candidate.</summary>
    public string? SeparationReason { get; init; }

    /// <summary>On what it is scored; anything but <c>live</c> is the model.</summary>
    public Subject ReadSubject() => Subject == "live" ? Training.Courses.Subject.Live : Training.Courses.Subject.Model;

    /// <summary>Whether another's try is scored too.</summary>
    public TryChoice Choice => string.IsNullOrEmpty(Second) ? TryChoice.Next : TryChoice.SecondScoring;

    /// <summary>Reads the form as a sheet of this start, and finds everything that is wrong with it.</summary>
    /// <param name="start">The class, the candidate and what is known of both.</param>
    /// <param name="now">UTC.</param>
    /// <param name="problems">Receives what is wrong.</param>
    public StartedScoresheet Read(Start start, DateTimeOffset now, ICollection<Problem> problems)
    {
        var live = ReadSubject() == Training.Courses.Subject.Live && start.ModelPass is not null ? ReadLive(start, now, problems) : null;
        if (ReadSubject() == Training.Courses.Subject.Live && start.ModelPass is null) problems.Add(At(nameof(Subject), ScoresheetFormProblems.ModelFirst));
        if (Choice == TryChoice.Next && start.FindRetestProblem(ReadSubject()) is { } retest) problems.Add(retest);
        if (start.SetAside.Contains(ReadSubject())) problems.Add(At(nameof(Subject), ScoresheetFormProblems.SetAsideOfTheirs));
        var number = ReadTry(start, problems);
        CheckReason(start, problems);
        var used = KitOnDay.Choose(start.Kit, [.. Kit], problems);
        return new()
        {
            Id = Id,
            ClassId = start.Day.Id,
            CandidateId = start.CandidateId,
            InstructorId = start.InstructorId,
            CourseHash = start.Course.Hash,
            ChecklistId = start.Checklist.Id,
            ChecklistVersion = start.Checklist.Version,
            Subject = live is null ? Training.Courses.Subject.Model : Training.Courses.Subject.Live,
            Try = number,
            Language = LanguageTags.Find(Language ?? "") ?? start.CandidateLanguage,
            StartedAt = now,
            IsIdentityConfirmed = IdentityConfirmed,
            Surroundings = Surroundings?.Trim() ?? "",
            AirTemperature = ReadTemperature(problems),
            Kit = string.Join(", ", used.Select(piece => start.Kit.First(there => there.Id == piece.PieceId).Label)),
            UsedKit = [.. used.Select((piece, place) => new StartedKit
            {
                ScoresheetId = Id, Position = place + 1, PieceId = piece.PieceId, InspectionId = piece.InspectionId,
            })],
            PermitNumber = live?.PermitNumber,
            BitePlanCheckedOn = live?.BitePlanCheckedOn,
            CommunicationsTestedAt = live?.CommunicationsTestedAt,
            WatcherId = live?.WatcherId,
            ModelPassId = live?.ModelPassId,
            SeparationReason = start.Bond is null ? null : SeparationReason?.Trim(),
        };
    }

    private int ReadTry(Start start, ICollection<Problem> problems)
    {
        var next = start.Tries.Next(ReadSubject());
        if (Choice == TryChoice.Next)
        {
            // Who did not see that somebody else scores has not chosen: the same performance would become two tries.
            if (Offered is { } offered && offered != start.Second.Count) problems.Add(At(nameof(Second), ScoresheetFormProblems.ScoredMeanwhile));
            return next;
        }

        if (start.Second.FirstOrDefault(other => other.Value == Second && other.Subject == ReadSubject()) is { } chosen) return chosen.Try;
        problems.Add(At(nameof(Second), ScoresheetFormProblems.NoSuchTry));
        return next;
    }

    private LiveConditions ReadLive(Start start, DateTimeOffset now, ICollection<Problem> problems)
    {
        if (!DateOnly.TryParseExact(BitePlanCheckedOn, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var checkedOn))
        {
            problems.Add(At(nameof(BitePlanCheckedOn), ScoresheetFormProblems.BitePlanDayUnreadable));
            checkedOn = start.Day.HeldOn; // told already; the rest of the form is looked at all the same
        }

        var testedAt = now;
        if (DateTime.TryParse(CommunicationsTestedAt, CultureInfo.InvariantCulture, DateTimeStyles.None, out var local))
            testedAt = new DateTimeOffset(DateTime.SpecifyKind(local, DateTimeKind.Unspecified), start.Zone.GetUtcOffset(local)).ToUniversalTime();
        else
            problems.Add(At(nameof(CommunicationsTestedAt), ScoresheetFormProblems.CallTimeUnreadable));

        var watcher = start.Watchers.FirstOrDefault(person => person.Id == WatcherId).Id;
        return new(PermitNumber?.Trim() ?? "", checkedOn, testedAt, watcher, start.ModelPass!.Id); // not null: the caller looked
    }

    private int? ReadTemperature(ICollection<Problem> problems)
    {
        if (string.IsNullOrWhiteSpace(AirTemperature)) return null;
        if (int.TryParse(AirTemperature.Trim().Replace('−', '-'), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var degrees)) return degrees;
        problems.Add(At(nameof(AirTemperature), ScoresheetFormProblems.TemperatureUnreadable, AirTemperature.Trim()));
        return null;
    }

    private void CheckReason(Start start, ICollection<Problem> problems)
    {
        if (start.Bond is not { } bond) return;
        if (string.IsNullOrWhiteSpace(SeparationReason))
            problems.Add(At(nameof(SeparationReason), ScoresheetFormProblems.ReasonMissing, Languages.Written.Date(bond.On)));
        else if (SeparationReason.Trim().Length > Bounds.Reason)
            problems.Add(At(nameof(SeparationReason), ScoresheetFormProblems.ReasonTooLong, Text(SeparationReason.Trim().Length), Text(Bounds.Reason)));
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static Problem At(string field, string code, params IReadOnlyList<string> arguments) => new(code, Place.Of(field), arguments);
}
