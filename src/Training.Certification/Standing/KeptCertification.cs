namespace Training.Certification;

/// <summary>One person's certification under one scheme as it lies in the records: each row with the day on which it came there.</summary>
/// <param name="PersonId">Whose.</param>
/// <param name="SchemeId">Under which scheme.</param>
/// <param name="Periods">By number, 1 first; at least one.</param>
/// <param name="Suspensions">In the order of their start.</param>
/// <param name="Withdrawals">In the order of their day.</param>
public sealed record KeptCertification(
    Guid PersonId,
    string SchemeId,
    IReadOnlyList<KeptPeriod> Periods,
    IReadOnlyList<KeptSuspension> Suspensions,
    IReadOnlyList<KeptWithdrawal> Withdrawals)
{
    /// <summary>All of it, as it is known now.</summary>
    public HeldCertification Held => new(
        PersonId, SchemeId,
        [.. Periods.Select(row => row.Period)], [.. Suspensions.Select(row => row.Suspension)], [.. Withdrawals.Select(row => row.Withdrawal)]);

    /// <summary>What the records held at the end of a day; null where no period was kept by then.</summary>
    public KeptCertification? AsKnownOn(DateOnly day)
    {
        // A period is known only together with those before it: in two zones, two rows of one day can bear dates in the wrong order.
        KeptPeriod[] periods = [.. Periods.TakeWhile(row => row.KeptOn <= day)];
        return periods.Length == 0 ? null : this with
        {
            Periods = periods,
            Suspensions = [.. Suspensions.Where(row => row.KeptOn <= day).Select(row => row.AsKnownOn(day))],
            Withdrawals = [.. Withdrawals.Where(row => row.KeptOn <= day)],
        };
    }
}

/// <summary>A period with the decision that opened it.</summary>
/// <param name="Period">The period.</param>
/// <param name="DecisionId">The decision.</param>
/// <param name="Route">Grant or renewal.</param>
/// <param name="LeadId">Who decided; null where the published rule did.</param>
/// <param name="CourseHash">The text of the rules that it was decided by.</param>
/// <param name="Zone">IANA zone of its days.</param>
/// <param name="RestsOn">Ids of the results it rests on.</param>
/// <param name="KeptOn">The day on which it came into the records, in <paramref name="Zone"/>.</param>
public sealed record KeptPeriod(
    Period Period, Guid DecisionId, Route Route, Guid? LeadId, string CourseHash, string Zone, IReadOnlyList<Guid> RestsOn, DateOnly KeptOn);

/// <summary>A suspension with the days on which its rows came into the records, in the zone of the period that it names.</summary>
/// <param name="Id">Of its row.</param>
/// <param name="Suspension">The suspension, with what ended it.</param>
/// <param name="KeptOn">When the suspension came there.</param>
/// <param name="ReinstatementKeptOn">When its end did; null while there is none.</param>
public sealed record KeptSuspension(Guid Id, Suspension Suspension, DateOnly KeptOn, DateOnly? ReinstatementKeptOn)
{
    /// <summary>Without an end that came later than the day.</summary>
    public KeptSuspension AsKnownOn(DateOnly day) => ReinstatementKeptOn <= day
        ? this
        : this with { Suspension = Suspension with { Reinstatement = null }, ReinstatementKeptOn = null };
}

/// <summary>A withdrawal with the day on which it came into the records, in the zone of the period that it names.</summary>
/// <param name="Id">Of its row.</param>
/// <param name="Withdrawal">The withdrawal.</param>
/// <param name="KeptOn">When it came there.</param>
public sealed record KeptWithdrawal(Guid Id, Withdrawal Withdrawal, DateOnly KeptOn);
