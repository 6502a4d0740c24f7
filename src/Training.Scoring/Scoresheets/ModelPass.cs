namespace Training.Scoring;

/// <summary>A passed scoresheet on the model, as the records hold it; a live sheet must point to one.</summary>
/// <param name="Id">The sheet's id.</param>
/// <param name="CandidateId">Who passed.</param>
/// <param name="ChecklistId">On which checklist.</param>
/// <param name="SignedAt">UTC.</param>
/// <remarks>Make one only of a sheet whose subject is the model and whose result is <see cref="PracticalOutcome.Passed"/>.</remarks>
public sealed record ModelPass(Guid Id, Guid CandidateId, string ChecklistId, DateTimeOffset SignedAt);
