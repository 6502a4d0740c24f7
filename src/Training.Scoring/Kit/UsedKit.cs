namespace Training.Scoring;

/// <summary>A piece of kit that a practical was scored with.</summary>
/// <param name="PieceId">Which.</param>
/// <param name="InspectionId">The inspection that held on the day.</param>
public sealed record UsedKit(Guid PieceId, Guid InspectionId);
