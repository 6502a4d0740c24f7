using Training.Documents.BitePlans;
using Training.Records;

namespace Training.Web.Features.BitePlans;

/// <summary>The bite plan of a site as a page.</summary>
/// <param name="Site">Which.</param>
/// <param name="Plan">What it says; null where nobody wrote one.</param>
/// <param name="Numbers">Whom to call where there is no plan; null where nobody wrote that either.</param>
/// <param name="Paper">Address of the paper.</param>
public sealed record BitePlanShown(Records.Site Site, BitePlanPage? Plan, EmergencyNumbers? Numbers, string Paper);

/// <summary>The form of a site's bite plan, and the addresses at which strangers read it.</summary>
/// <param name="Site">Which.</param>
/// <param name="EmployerName">Whose.</param>
/// <param name="Today">The date there.</param>
/// <param name="Plan">As it serves; null where nobody wrote one.</param>
/// <param name="Addresses">Newest first.</param>
/// <param name="Names">Of who made them.</param>
/// <param name="Form">As it serves, as advised, or as typed.</param>
/// <param name="AddressFormId">Of the form that makes an address.</param>
public sealed record BitePlanEditPage(
    Records.Site Site, string EmployerName, DateOnly Today, BitePlan? Plan, IReadOnlyList<MadeBitePlanAddress> Addresses, IReadOnlyDictionary<Guid, string> Names,
    BitePlanForm Form, Guid AddressFormId)
{
    private const int LeastRows = 3;

    /// <summary>Rows of hospitals: two more than are filled in.</summary>
    public int Rows => Math.Clamp(Form.Hospitals.Count + 2, LeastRows, BitePlanPage.MostHospitals);

    /// <summary>Whom the address that could not be made was for, as typed.</summary>
    public string? MadeFor { get; init; }

    /// <summary>The address that was just made, shown this once; null otherwise.</summary>
    public Uri? Made { get; init; }

    /// <summary>The form came again: its address was made before and cannot be shown any more.</summary>
    public bool WasMadeBefore { get; init; }
}

/// <summary>The bite plans of an employer's sites.</summary>
/// <param name="EmployerId">Whose.</param>
/// <param name="EmployerName">Its name.</param>
/// <param name="IsLead">The reader may write plans.</param>
/// <param name="Sites">By name.</param>
public sealed record BitePlanListPage(Guid EmployerId, string EmployerName, bool IsLead, IReadOnlyList<BitePlanRow> Sites)
{
    /// <summary>Sites without a plan, and with one that is overdue.</summary>
    public int ToDo => Sites.Count(row => row.DaysLeft is null or < 0);
}

/// <summary>A site and its bite plan.</summary>
/// <param name="Site">Which.</param>
/// <param name="Plan">Null where nobody wrote one.</param>
/// <param name="Today">The date there.</param>
public sealed record BitePlanRow(Records.Site Site, BitePlan? Plan, DateOnly Today)
{
    /// <summary>Through the day by which it is to be reviewed, negative when that has passed; null without a plan.</summary>
    public int? DaysLeft => Plan?.ReviewOn.DayNumber - Today.DayNumber;
}
