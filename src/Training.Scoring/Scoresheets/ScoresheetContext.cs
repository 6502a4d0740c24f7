namespace Training.Scoring;

/// <summary>What grading a scoresheet needs to know besides the sheet.</summary>
/// <param name="SignedOn">The calendar day of <see cref="Scoresheet.SignedAt"/> in the zone of the site.</param>
/// <param name="ModelPass">What <see cref="LiveConditions.ModelPassId"/> led to in the records, or null; not looked at on a model.</param>
public sealed record ScoresheetContext(DateOnly SignedOn, ModelPass? ModelPass = null);
