using Training.Certification;

namespace Training.Records;

/// <summary>How somebody stands under a scheme on a day, as the database works it out. A row of a query, never of a table.</summary>
public sealed class StandingRow
{
    /// <summary>Whose.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>Under which scheme.</summary>
    public required string SchemeId { get; init; }

    /// <summary>The period that the day belongs to.</summary>
    public required int Number { get; init; }

    /// <summary>Last day of that period.</summary>
    public required DateOnly ExpiresOn { get; init; }

    /// <summary>Last day of its grace.</summary>
    public required DateOnly GraceEndsOn { get; init; }

    /// <summary>On the day.</summary>
    public required Standing Standing { get; init; }
}

/// <summary>Standing as a query, so that lists are filtered, sorted and counted where the rows lie.</summary>
public static class StandingQueries
{
    /// <summary>
    /// What everybody who holds or held something holds on a day, a row a person and scheme. To be narrowed down by person or scheme: all
    /// of it reads the whole table.
    /// </summary>
    /// <remarks>
    /// Says what <see cref="Standings.On"/> says, docs/rules.md, "Standing" and "Suspension and withdrawal": a test compares the two on random
    /// histories. Nothing is computed but comparisons of stored days.
    /// </remarks>
    public static IQueryable<StandingRow> StandingsOn(this RecordsContext records, DateOnly day) =>
        from period in records.Periods
        where period.StartsOn <= day
            && !records.Periods.Any(later => later.PersonId == period.PersonId && later.SchemeId == period.SchemeId
                && later.Number > period.Number && later.StartsOn <= day)
        select new StandingRow
        {
            PersonId = period.PersonId,
            SchemeId = period.SchemeId,
            Number = period.Number,
            ExpiresOn = period.ExpiresOn,
            GraceEndsOn = period.GraceEndsOn,
            Standing =
                records.Withdrawals.Any(withdrawal => withdrawal.PersonId == period.PersonId && withdrawal.SchemeId == period.SchemeId
                    && withdrawal.WithdrawnOn <= day && withdrawal.WithdrawnOn >= period.StartsOn) ? Standing.Withdrawn
                : records.Suspensions.Any(suspension => suspension.PersonId == period.PersonId && suspension.SchemeId == period.SchemeId
                    && suspension.StartsOn <= day
                    && !records.Reinstatements.Any(end => end.SuspensionId == suspension.Id && end.ReinstatedOn < day)
                    // A withdrawal settles the suspension before it.
                    && !records.Withdrawals.Any(withdrawal => withdrawal.PersonId == period.PersonId && withdrawal.SchemeId == period.SchemeId
                        && withdrawal.WithdrawnOn >= suspension.StartsOn && withdrawal.WithdrawnOn < day)) ? Standing.Suspended
                : period.ExpiresOn < day ? Standing.Lapsed
                : period.WindowOpensOn <= day ? Standing.RenewalDue
                : Standing.Current,
        };
}
