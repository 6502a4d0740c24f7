namespace Training.Records;

/// <summary>Somebody whom an employer employs on a day, with what lists are sorted and searched by. A row of a query, never of a table.</summary>
public sealed class EmployedRow
{
    /// <summary>Who.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>In use on that day; null where it was erased or none was kept.</summary>
    public required string? Name { get; init; }

    /// <summary>What the name is sorted by: <see cref="PersonName.TextOrder"/>.</summary>
    public required string? NameOrder { get; init; }

    /// <summary>Number with this employer; null where they have none.</summary>
    public required string? Badge { get; init; }

    /// <summary>What the number is compared by.</summary>
    public required string? BadgeKey { get; init; }

    /// <summary>One of this employer's; null where they are assigned to none of them that day.</summary>
    public required Guid? SiteId { get; init; }

    /// <summary>Its name.</summary>
    public required string? SiteName { get; init; }

    /// <summary>What its name is compared by.</summary>
    public required string? SiteKey { get; init; }

    /// <summary>Crew on one of this employer's sites; null where they are in none.</summary>
    public required Guid? CrewId { get; init; }

    /// <summary>Its name.</summary>
    public required string? CrewName { get; init; }
}
