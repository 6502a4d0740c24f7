namespace Training.Certification;

/// <summary>One reminder about one period of a certification.</summary>
/// <param name="PersonId">Whose certification.</param>
/// <param name="SchemeId">Under which scheme.</param>
/// <param name="PeriodNumber">Of which period. With <paramref name="Milestone"/> it names the reminder: it goes out once.</param>
/// <param name="Milestone">Which of the scheme's days it is for.</param>
/// <param name="DueOn">The day of the milestone, in the zone of the holder's site.</param>
/// <param name="ExpiresOn">The last day of the period.</param>
public sealed record Reminder(Guid PersonId, string SchemeId, int PeriodNumber, Milestone Milestone, DateOnly DueOn, DateOnly ExpiresOn);
