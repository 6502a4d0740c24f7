using Training.Courses;
using Training.Records;
using Training.Scoring;

namespace Training.Web.Features.Scoresheets;

/// <summary>Reads a started sheet as the scoresheet that it would be if it were signed now.</summary>
internal static class StartedSheets
{
    /// <param name="started">With its marks.</param>
    /// <param name="checklist">That it is scored with. A step without a mark, and every step after a stop, is not observed.</param>
    /// <param name="signedAt">UTC.</param>
    /// <param name="signedName">Who signs.</param>
    public static Scoresheet ToScoresheet(this StartedScoresheet started, Checklist checklist, DateTimeOffset signedAt, string signedName) => new(
        started.Id, started.ClassId, started.CandidateId, started.InstructorId, started.CourseHash, started.ChecklistId, started.ChecklistVersion,
        started.Subject, started.Try,
        [.. started.MarksOf(checklist).Select((mark, place) => new StepObservation(checklist.Steps[place].Id, mark ?? Observation.NotObserved))],
        started.StoppedAtStep, started.ReadLive(),
        new(started.Surroundings, started.AirTemperature, started.Kit, started.ReadKit()),
        started.Language, started.IsIdentityConfirmed, signedAt, signedName, Remarks: "", InstructionsReadAt: started.InstructionsReadAt);

    /// <summary>The started sheet that a signed one would have come from.</summary>
    public static StartedScoresheet ToStarted(this Scoresheet sheet) => new()
    {
        Id = sheet.Id,
        ClassId = sheet.ClassId,
        CandidateId = sheet.CandidateId,
        InstructorId = sheet.InstructorId,
        CourseHash = sheet.CourseHash,
        ChecklistId = sheet.ChecklistId,
        ChecklistVersion = sheet.ChecklistVersion,
        Subject = sheet.Subject,
        Try = sheet.Try,
        Language = sheet.Language,
        StartedAt = sheet.SignedAt,
        InstructionsReadAt = sheet.InstructionsReadAt,
        IsIdentityConfirmed = sheet.IdentityConfirmed,
        Surroundings = sheet.Conditions.Surroundings,
        AirTemperature = sheet.Conditions.AirTemperature,
        Kit = sheet.Conditions.Kit,
        UsedKit = [.. sheet.Conditions.Pieces.Select((piece, place) => new StartedKit
        {
            ScoresheetId = sheet.Id, Position = place + 1, PieceId = piece.PieceId, InspectionId = piece.InspectionId,
        })],
        PermitNumber = sheet.Live?.PermitNumber,
        BitePlanCheckedOn = sheet.Live?.BitePlanCheckedOn,
        CommunicationsTestedAt = sheet.Live?.CommunicationsTestedAt,
        WatcherId = sheet.Live?.WatcherId,
        ModelPassId = sheet.Live?.ModelPassId,
        StoppedAtStep = sheet.StoppedAtStep,
        Observations = [.. sheet.Observations.Select((seen, place) => new StartedObservation
        {
            ScoresheetId = sheet.Id, StepId = seen.StepId, Position = place + 1, Observation = seen.Observation, SavedAt = sheet.SignedAt,
        })],
    };

    /// <summary>A mark a step, in the checklist's order; null where there is none, and after a stop.</summary>
    public static IReadOnlyList<Observation?> MarksOf(this StartedScoresheet started, Checklist checklist)
    {
        var marks = started.Observations.ToDictionary(mark => mark.StepId, mark => mark.Observation, StringComparer.Ordinal);
        var stop = checklist.Steps.Index().FirstOrDefault(step => step.Item.Id == started.StoppedAtStep);
        var last = stop.Item is null ? checklist.Steps.Count - 1 : stop.Index;
        return [.. checklist.Steps.Select((step, place) => place <= last && marks.TryGetValue(step.Id, out var mark) ? mark : (Observation?)null)];
    }

    /// <summary>The number of the first step without a mark, from 1; null where it was stopped or all are marked.</summary>
    public static int? FirstWithoutMark(this StartedScoresheet started, Checklist checklist)
    {
        if (started.StoppedAtStep is not null) return null;
        var place = started.MarksOf(checklist).Index().FirstOrDefault(mark => mark.Item is null, (Index: -1, Item: null)).Index;
        return place < 0 ? null : place + 1;
    }
}
