namespace Training.Scoring;

/// <summary>A passed scoresheet on the model, as the records know it: what a live sheet rests on.</summary>
/// <param name="ScoresheetId">Its id.</param>
/// <param name="CandidateId">Whose.</param>
/// <param name="ChecklistId">At which checklist.</param>
/// <param name="SignedAt">UTC.</param>
public sealed record ModelPass(Guid ScoresheetId, Guid CandidateId, string ChecklistId, DateTimeOffset SignedAt);
