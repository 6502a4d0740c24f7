namespace Training.Records;

/// <summary>Somebody whom an employer employs on a day, and where they work there.</summary>
/// <param name="PersonId">Who.</param>
/// <param name="Name">In use on that day; null where it was erased or none was kept.</param>
/// <param name="Badge">Number with this employer; null where they have none.</param>
/// <param name="SiteId">One of this employer's; null where they are assigned to none of them that day.</param>
/// <param name="SiteName">Its name.</param>
/// <param name="CrewName">Crew on one of this employer's sites; null where they are in none.</param>
public sealed record EmployedPerson(Guid PersonId, string? Name, string? Badge, Guid? SiteId, string? SiteName, string? CrewName);
