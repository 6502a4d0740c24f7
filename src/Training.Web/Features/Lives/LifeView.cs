using Training.Certification;

namespace Training.Web.Features.Lives;

/// <summary>Who reads a history. An employer reads neither names of leads nor what they wrote.</summary>
public enum LifeReader
{
    /// <summary>A programme lead.</summary>
    Lead,

    /// <summary>The holder.</summary>
    Holder,

    /// <summary>The holder's employer.</summary>
    Employer,
}

/// <summary>A stretch of a certification's history as a list.</summary>
/// <param name="Events">In the order that they are shown in.</param>
/// <param name="Reader">Who reads it.</param>
/// <param name="Names">Of leads, by person; erased ones are not there.</param>
public sealed record LifeView(IReadOnlyList<LifeEvent> Events, LifeReader Reader, IReadOnlyDictionary<Guid, string> Names)
{
    /// <summary>The whole history through a day, the newest first.</summary>
    public static LifeView Of(KeptCertification kept, DateOnly today, LifeReader reader, IReadOnlyDictionary<Guid, string> names) =>
        new([.. Life.Of(kept, today).Reverse()], reader, names);

    /// <summary>All leads whom the histories of these certifications may name.</summary>
    public static IEnumerable<Guid> LeadsIn(IEnumerable<KeptCertification> kept) => kept.SelectMany(one =>
        one.Periods.Select(row => row.LeadId).OfType<Guid>()
            .Concat(one.Suspensions.SelectMany(row => new[] { row.Suspension.By, row.Suspension.Reinstatement?.By ?? row.Suspension.By }))
            .Concat(one.Withdrawals.SelectMany(row => new[] { row.Withdrawal.By, row.Withdrawal.ConfirmedBy })));
}
