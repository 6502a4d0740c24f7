using Training.Certification;
using Training.Records;

namespace Training.Web.Features.ClassPlans;

/// <summary>Plans, and the form of a new one.</summary>
/// <param name="Plans">The newest first.</param>
/// <param name="Employers">To choose from, by name; also the names of <paramref name="Plans"/>.</param>
/// <param name="Schemes">Whose renewal asks for a class.</param>
/// <param name="Form">As typed, or what is likely.</param>
public sealed record ClassPlansPage(
    IReadOnlyList<(ClassPlanRecord Plan, bool IsAccepted)> Plans, IReadOnlyDictionary<Guid, string> Employers, IReadOnlyList<(string Id, string Title)> Schemes,
    ClassPlanForm Form);

/// <summary>One plan.</summary>
/// <param name="Kept">As it is stored.</param>
/// <param name="EmployerName">Whose people.</param>
/// <param name="SchemeTitle">Whose renewals.</param>
/// <param name="Basis">What it rests on now.</param>
/// <param name="Review">As it stands now.</param>
/// <param name="MayChange">Whether the visitor may change and accept it: a lead, while it is not accepted.</param>
/// <param name="Names">Of everybody on the page, by id; who was erased is missing.</param>
public sealed record ClassPlanPage(
    KeptPlan Kept, string EmployerName, string SchemeTitle, PlanBasis Basis, PlanReview Review, bool MayChange, IReadOnlyDictionary<Guid, string> Names)
{
    /// <summary>How many people have a seat.</summary>
    public int Seated => Kept.Newest.Classes.Sum(one => one.WorkerIds.Count);

    /// <summary>Whether what is shown is what the search proposed.</summary>
    public bool IsAsProposed => Kept.Newest.Number == 1;
}

/// <summary>Plans that an employer may see.</summary>
public sealed record EmployerPlansPage(Guid EmployerId, string EmployerName, IReadOnlyList<(ClassPlanRecord Plan, bool IsAccepted)> Plans, IReadOnlyDictionary<string, string> Titles);

/// <summary>An instructor's days.</summary>
/// <param name="InstructorId">Whose.</param>
/// <param name="Name">Their name; null where it was erased.</param>
/// <param name="IsOwn">Whether the visitor is that instructor.</param>
/// <param name="Rows">From today on, the one kept last first.</param>
/// <param name="FreeDays">Of the next <see cref="DaysAhead"/> days, those that are free.</param>
/// <param name="Form">As typed.</param>
public sealed record InstructorDaysPage(
    Guid InstructorId, string? Name, bool IsOwn, IReadOnlyList<InstructorDays> Rows, IReadOnlyList<DateOnly> FreeDays, InstructorDaysForm Form)
{
    /// <summary>How far the page looks ahead.</summary>
    public const int DaysAhead = 90;
}

/// <summary>Ways between the sites of an employer.</summary>
public sealed record SiteTravelsPage(Guid EmployerId, string EmployerName, IReadOnlyList<Records.Site> Sites, IReadOnlyList<Travel> Travels, SiteTravelForm Form);
