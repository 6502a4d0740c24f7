using Training.Scoring;

namespace Training.Records;

/// <summary>Scoresheets and their results as rows, and back.</summary>
internal static class ScoresheetRows
{
    internal static ScoresheetRecord Of(
        Scoresheet sheet, string hash, int copy, Guid? modelPassRow, DateOnly scoredOn, string zone, DateTimeOffset now)
    {
        var id = Guid.CreateVersion7(now);
        return new()
        {
            Id = id,
            FormId = sheet.Id,
            Copy = copy,
            ContentHash = hash,
            ClassId = sheet.ClassId,
            CandidateId = sheet.CandidateId,
            InstructorId = sheet.InstructorId,
            CourseHash = sheet.CourseHash,
            ChecklistId = sheet.ChecklistId,
            ChecklistVersion = sheet.ChecklistVersion,
            Subject = sheet.Subject,
            Try = sheet.Try,
            StoppedAtStep = sheet.StoppedAtStep,
            Language = sheet.Language,
            IsIdentityConfirmed = sheet.IdentityConfirmed,
            Surroundings = sheet.Conditions.Surroundings,
            AirTemperature = sheet.Conditions.AirTemperature,
            Kit = sheet.Conditions.Kit,
            SignedAt = sheet.SignedAt,
            SignedName = sheet.SignedName,
            ScoredOn = scoredOn,
            Zone = zone,
            Remarks = sheet.Remarks,
            Impression = sheet.Impression,
            InstructionsReadAt = sheet.InstructionsReadAt,
            Seconds = sheet.Seconds,
            KeptAt = now,
            Observations = [.. sheet.Observations.Select((observation, index) => new StepObservationRecord
            {
                ScoresheetId = id,
                StepId = observation.StepId,
                Position = index + 1,
                Observation = observation.Observation,
            })],
            UsedKit = [.. sheet.Conditions.Pieces.Select((used, index) => new ScoresheetKit
            {
                ScoresheetId = id, Position = index + 1, PieceId = used.PieceId, InspectionId = used.InspectionId,
            })],
            Live = sheet.Live is { } live && modelPassRow is { } modelPass ? Of(live, id, modelPass) : null,
        };
    }

    internal static ScoresheetResultRecord Of(ScoresheetResult result, Guid scoresheetId, int number, DateTimeOffset now) => new()
    {
        Id = Guid.CreateVersion7(now),
        ScoresheetId = scoresheetId,
        Number = number,
        ChecklistVersion = result.ChecklistVersion,
        Outcome = result.Outcome,
        Points = result.Points,
        MaxPoints = result.MaxPoints,
        Reasons = StoredJson.Write(result.Reasons),
        GradedAt = now,
    };

    /// <param name="row">With its observations and live conditions.</param>
    /// <param name="modelPassFormId">The form id of the model pass that a live sheet names; null on a model.</param>
    internal static Scoresheet Read(ScoresheetRecord row, Guid? modelPassFormId) => new(
        row.FormId, row.ClassId, row.CandidateId, row.InstructorId, row.CourseHash, row.ChecklistId, row.ChecklistVersion, row.Subject, row.Try,
        [.. row.Observations.OrderBy(step => step.Position).Select(step => new StepObservation(step.StepId, step.Observation))],
        row.StoppedAtStep,
        row.Live is { } live && modelPassFormId is { } modelPass
            ? new LiveConditions(live.PermitNumber, live.BitePlanCheckedOn, live.CommunicationsTestedAt, live.WatcherId, modelPass)
            : null,
        new PracticalConditions(row.Surroundings, row.AirTemperature, row.Kit,
            [.. row.UsedKit.OrderBy(used => used.Position).Select(used => new UsedKit(used.PieceId, used.InspectionId))]),
        row.Language, row.IsIdentityConfirmed, row.SignedAt, row.SignedName, row.Remarks, row.Impression, row.InstructionsReadAt, row.Seconds);

    internal static ScoresheetResult Read(ScoresheetResultRecord row) => new(
        row.ChecklistVersion, row.Outcome, row.Points, row.MaxPoints, StoredJson.Read<ScoresheetReason>(row.Reasons));

    private static LiveConditionsRecord Of(LiveConditions live, Guid scoresheetId, Guid modelPassRow) => new()
    {
        ScoresheetId = scoresheetId,
        PermitNumber = live.PermitNumber,
        BitePlanCheckedOn = live.BitePlanCheckedOn,
        CommunicationsTestedAt = live.CommunicationsTestedAt,
        WatcherId = live.WatcherId,
        ModelPassId = modelPassRow,
    };
}
