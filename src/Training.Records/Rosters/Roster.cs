using Training.Courses;

namespace Training.Records;

/// <summary>An employer's people as a file has them.</summary>
/// <param name="Rows">In the file's order; no badge number twice.</param>
/// <param name="SaysCrew">Whether the file has a column for crews. Where it has none, nobody's crew is in question.</param>
/// <param name="SaysMailAddress">The same for mail addresses.</param>
public sealed record Roster(IReadOnlyList<RosterRow> Rows, bool SaysCrew, bool SaysMailAddress);

/// <summary>One person in the file.</summary>
/// <param name="Line">One-based line on which the row begins.</param>
/// <param name="Badge">Number with the employer.</param>
/// <param name="Name">As they write it.</param>
/// <param name="SiteId">A site of the employer.</param>
/// <param name="SiteName">Its name.</param>
/// <param name="Crew">Name of a crew of that site, there already or not; null for none.</param>
/// <param name="Language">To write to them in; null where the row does not say: English for somebody new, as it was for everybody else.</param>
/// <param name="MailAddress">Null for none.</param>
/// <param name="StartsOn">First day of somebody who is new or comes back; of no matter for everybody else.</param>
public sealed record RosterRow(
    int Line, string Badge, string Name, Guid SiteId, string SiteName, string? Crew, Language? Language, string? MailAddress, DateOnly StartsOn)
{
    /// <summary>What the number is compared by.</summary>
    public string BadgeKey => KeyText.Of(Badge);
}

/// <summary>Somebody who works for the employer or once did, as a roster is compared with them.</summary>
/// <param name="PersonId">Who.</param>
/// <param name="BadgeKeys">Every number that names them at this employer, in the form that is compared.</param>
/// <param name="Badge">The newest of them as printed; null where they have none.</param>
/// <param name="Name">The newest; null where it was erased or none was kept.</param>
/// <param name="SiteId">The employer's site where they work from now on or will; null where there is none.</param>
/// <param name="SiteName">Its name.</param>
/// <param name="Crew">Their crew there.</param>
/// <param name="Language">To write to them in.</param>
/// <param name="MailAddress">Null for none.</param>
/// <param name="IsEmployed">Whether their employment lasts, or begins later.</param>
/// <param name="IsPlacedElsewhere">Whether they work on another employer's site: then this employer's roster does not move them.</param>
/// <param name="LeftOn">Last day of their last employment that is over; null where there is none.</param>
public sealed record RosterPerson(
    Guid PersonId, IReadOnlyList<string> BadgeKeys, string? Badge, string? Name, Guid? SiteId, string? SiteName, string? Crew,
    Language Language, string? MailAddress, bool IsEmployed, bool IsPlacedElsewhere, DateOnly? LeftOn);

/// <summary>Whether who is missing from a file leaves.</summary>
public enum RosterScope
{
    /// <summary>The file may hold some of the people: nobody leaves.</summary>
    Part,

    /// <summary>The file holds all of them: the employment of everybody else ends.</summary>
    Whole,
}
