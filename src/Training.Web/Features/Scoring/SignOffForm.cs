using System.Globalization;
using Training.Courses;
using Training.Records;
using Training.Scoring;

namespace Training.Web.Features.Scoring;

/// <summary>
/// What a signature posts: everything that was on the screen, in hidden fields, so that what is signed is what was seen, whatever another
/// tab did meanwhile. Who was scored, by whom, with which checklist and with what kit follows from the sheet and cannot be posted.
/// </summary>
public sealed class SignOffForm
{
    private const char Between = '=';

    /// <summary>Model or live.</summary>
    public Subject Subject { get; init; }

    /// <summary>Of the day.</summary>
    public int Try { get; init; }

    /// <summary>Of the instructions.</summary>
    public Language Language { get; init; }

    /// <summary>Identification was looked at.</summary>
    public bool IdentityConfirmed { get; init; }

    /// <summary>Ground, light and weather.</summary>
    public string? Surroundings { get; init; }

    /// <summary>In °C.</summary>
    public int? AirTemperature { get; init; }


    /// <summary>Live only.</summary>
    public string? PermitNumber { get; init; }

    /// <summary>Live only.</summary>
    public DateOnly? BitePlanCheckedOn { get; init; }

    /// <summary>Live only, milliseconds since 1970, UTC.</summary>
    public long? CommunicationsTestedAt { get; init; }

    /// <summary>Live only.</summary>
    public Guid? WatcherId { get; init; }

    /// <summary>Live only.</summary>
    public Guid? ModelPassId { get; init; }

    /// <summary>The step of the stop, or null.</summary>
    public string? StoppedAtStep { get; init; }

    /// <summary>One a step, in order: <c>step=Done</c>.</summary>
    public IList<string> Marks { get; init; } = [];

    /// <summary>Chosen here, without a preset; null where nothing is chosen or it is none of the four.</summary>
    public string? Impression { get; init; }

    /// <summary>How long a drill took, typed here as minutes and seconds: 4:35.</summary>
    public string? Seconds { get; init; }

    /// <summary>Typed here.</summary>
    public string? Remarks { get; init; }

    /// <summary>Typed here.</summary>
    public string? SignedName { get; init; }

    /// <summary>The form that shows a scoresheet.</summary>
    public static SignOffForm Of(Scoresheet sheet) => new()
    {
        Subject = sheet.Subject,
        Try = sheet.Try,
        Language = sheet.Language,
        IdentityConfirmed = sheet.IdentityConfirmed,
        Surroundings = sheet.Conditions.Surroundings,
        AirTemperature = sheet.Conditions.AirTemperature,
        PermitNumber = sheet.Live?.PermitNumber,
        BitePlanCheckedOn = sheet.Live?.BitePlanCheckedOn,
        CommunicationsTestedAt = sheet.Live?.CommunicationsTestedAt.ToUnixTimeMilliseconds(),
        WatcherId = sheet.Live?.WatcherId,
        ModelPassId = sheet.Live?.ModelPassId,
        StoppedAtStep = sheet.StoppedAtStep,
        Marks = [.. sheet.Observations.Select(mark => $"{mark.StepId}{Between}{mark.Observation}")],
        Impression = sheet.Impression?.ToString(),
        Remarks = sheet.Remarks,
    };

    /// <summary>The scoresheet that was posted for this started sheet. A mark that cannot be read is none: grading names the step.</summary>
    public Scoresheet Read(StartedScoresheet started, DateTimeOffset signedAt) => new(
        started.Id, started.ClassId, started.CandidateId, started.InstructorId, started.CourseHash, started.ChecklistId, started.ChecklistVersion,
        Subject, Try, [.. Marks.Select(FindMark).OfType<StepObservation>()], StoppedAtStep,
        PermitNumber is { } permit && BitePlanCheckedOn is { } plan && CommunicationsTestedAt is { } call && WatcherId is { } watcher && ModelPassId is { } pass
            ? new LiveConditions(permit, plan, Instant(call), watcher, pass)
            : null,
        new(Surroundings ?? "", AirTemperature, started.Kit, started.ReadKit()),
        Language, IdentityConfirmed, signedAt, SignedName?.Trim() ?? "", Remarks?.Trim() ?? "", FindImpression(), started.InstructionsReadAt, FindSeconds());

    private Impression? FindImpression() =>
        Enum.TryParse<Impression>(Impression, out var impression) && Enum.IsDefined(impression) ? impression : null;

    // What cannot be read is no time: grading asks for it.
    private int? FindSeconds() =>
        Seconds?.Trim().Split(':') is [var minutes, var rest]
            && int.TryParse(minutes, NumberStyles.None, CultureInfo.InvariantCulture, out var whole) && whole <= ScoresheetGrader.MostSeconds
            && int.TryParse(rest, NumberStyles.None, CultureInfo.InvariantCulture, out var seconds) && seconds < 60
            ? (whole * 60) + seconds
            : null;

    private static StepObservation? FindMark(string text) =>
        text.Split(Between) is [var step, var word] && Enum.TryParse<Observation>(word, out var observation) && Enum.IsDefined(observation)
            ? new(step, observation)
            : null;

    // Beyond what an instant can be it is nobody's time; then it is no test of the last 24 hours either.
    private static DateTimeOffset Instant(long milliseconds) =>
        DateTimeOffset.FromUnixTimeMilliseconds(Math.Clamp(milliseconds, DateTimeOffset.MinValue.ToUnixTimeMilliseconds(), DateTimeOffset.MaxValue.ToUnixTimeMilliseconds()));
}
