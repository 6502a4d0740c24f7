namespace Training.Scoring;

/// <summary>What one inspection of a piece of kit found.</summary>
/// <param name="Id">Of the stored row.</param>
/// <param name="On">The day it was inspected.</param>
/// <param name="IsFit">It may be used.</param>
/// <param name="Reason">Why it may not; null where it is fit.</param>
/// <param name="NextDueOn">The last day through which the inspection holds; null where it is not fit.</param>
public sealed record KitInspection(Guid Id, DateOnly On, bool IsFit, string? Reason, DateOnly? NextDueOn);

/// <summary>A piece of kit was taken out of use, for good.</summary>
/// <param name="On">The first day on which it may not be used.</param>
/// <param name="Reason">Why.</param>
public sealed record KitRetirement(DateOnly On, string Reason);
