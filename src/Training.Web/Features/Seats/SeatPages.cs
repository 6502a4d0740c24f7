namespace Training.Web.Features.Seats;

/// <summary>How the visitor stands with a class ahead.</summary>
public enum MyClassState
{
    /// <summary>They have a seat.</summary>
    Seat,

    /// <summary>They wait for one.</summary>
    Waits,

    /// <summary>They had one and gave it back.</summary>
    GivenBack,

    /// <summary>The class does not take place.</summary>
    Cancelled,
}

/// <summary>One class of the visitor's.</summary>
/// <param name="Day">Which.</param>
/// <param name="State">How they stand with it.</param>
/// <param name="Place">Their place in line, from 1; 0 where they do not wait.</param>
public sealed record MyClass(SeatDay Day, MyClassState State, int Place);

/// <summary>The visitor's own classes ahead.</summary>
/// <param name="Today">Theirs.</param>
/// <param name="Classes">The next first.</param>
/// <param name="Titles">Of courses, by id.</param>
public sealed record MyClassesPage(DateOnly Today, IReadOnlyList<MyClass> Classes, IReadOnlyDictionary<string, string> Titles)
{
    /// <summary>The next class with a seat of the visitor's; null where there is none.</summary>
    public MyClass? Next => Classes.FirstOrDefault(one => one.State == MyClassState.Seat);

    /// <summary>The class whose form was refused, and what was typed.</summary>
    public (Guid ClassId, ReturnForm Form)? Refused { get; init; }
}

/// <summary>Classes ahead at the sites of an employer.</summary>
/// <param name="EmployerId">For addresses.</param>
/// <param name="EmployerName">Whose sites.</param>
/// <param name="Today">The visitor's.</param>
/// <param name="Classes">The next first.</param>
/// <param name="Titles">Of courses, by id.</param>
public sealed record EmployerClassesPage(
    Guid EmployerId, string EmployerName, DateOnly Today, IReadOnlyList<SeatDay> Classes, IReadOnlyDictionary<string, string> Titles);

/// <summary>One class at a site of an employer, with its own people.</summary>
/// <param name="EmployerId">For addresses.</param>
/// <param name="EmployerName">Whose site and people.</param>
/// <param name="Today">The visitor's.</param>
/// <param name="Day">Which.</param>
/// <param name="Title">Of its course.</param>
/// <param name="Seated">The employer's people with a seat, by name.</param>
/// <param name="Waiting">The employer's people who wait, the first in line first.</param>
/// <param name="Form">Of a new seat, as typed.</param>
/// <param name="Refused">Whose seat could not be given back; null where nothing was refused.</param>
public sealed record EmployerClassPage(
    Guid EmployerId, string EmployerName, DateOnly Today, SeatDay Day, string Title, IReadOnlyList<SeatedPerson> Seated, IReadOnlyList<SeatedPerson> Waiting,
    SeatForm Form, Guid? Refused);

/// <summary>Somebody with a seat, or in line for one.</summary>
/// <param name="PersonId">Who.</param>
/// <param name="Name">By name; null where it was erased.</param>
/// <param name="Place">Place in line, from 1; null for who has a seat.</param>
public sealed record SeatedPerson(Guid PersonId, string? Name, int? Place);
