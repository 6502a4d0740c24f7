using System.Globalization;
using Training.Records;
using Training.Web.Features.Sites;

namespace Training.Web.Features.BitePlans;

/// <summary>The form of a bite plan, whom to call included: as typed, so that nothing is lost where something is to be mended.</summary>
public sealed class BitePlanForm : EmergencyNumbersForm
{
    /// <summary>Degrees north and east with a comma between.</summary>
    public string? Coordinates { get; set; }

    /// <summary>What the ambulance is told; 1 to 500 characters.</summary>
    public string? AccessWords { get; set; }

    /// <summary>By when it is to be reviewed, as date fields write it.</summary>
    public string? ReviewOn { get; set; }

    /// <summary>A row that is empty is none.</summary>
    public List<HospitalForm> Hospitals { get; set; } = [];
}

/// <summary>A hospital, and what somebody said of its antivenom.</summary>
public sealed class HospitalForm
{
    /// <summary>1 to 200 characters.</summary>
    public string? Name { get; set; }

    /// <summary>Address and telephone; 1 to 200 characters.</summary>
    public string? Contact { get; set; }

    /// <summary>Drive time in whole minutes, 1 to 600.</summary>
    public string? DriveMinutes { get; set; }

    /// <summary>Of antivenom; up to 200 characters.</summary>
    public string? Said { get; set; }

    /// <summary>Who said it; up to 200 characters.</summary>
    public string? ToldBy { get; set; }

    /// <summary>When, as date fields write it.</summary>
    public string? ToldOn { get; set; }

    /// <summary>As it was kept.</summary>
    public static HospitalForm Of(PlannedHospital hospital) => new()
    {
        Name = hospital.Name, Contact = hospital.Contact, DriveMinutes = hospital.DriveMinutes.ToString(CultureInfo.InvariantCulture),
        Said = hospital.Antivenom?.Said, ToldBy = hospital.Antivenom?.ToldBy, ToldOn = hospital.Antivenom?.ToldOn.Iso(),
    };

    /// <summary>Nothing was typed.</summary>
    public bool IsEmpty => string.IsNullOrWhiteSpace($"{Name}{Contact}{DriveMinutes}{Said}{ToldBy}{ToldOn}");

    /// <summary>Nothing was typed of antivenom.</summary>
    public bool IsSilentOfAntivenom => string.IsNullOrWhiteSpace($"{Said}{ToldBy}{ToldOn}");
}
