using Microsoft.AspNetCore.Mvc.ModelBinding;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Shelf;

namespace Training.Web.Features.Sites;

/// <summary>The form of whom to call from a site.</summary>
public class EmergencyNumbersForm
{
    /// <summary>Made when the form was: the same twice is one row.</summary>
    public Guid Id { get; set; }

    /// <summary>Emergency services; 1 to 60 characters.</summary>
    public string? EmergencyServices { get; set; }

    /// <summary>Poison control; 1 to 60 characters.</summary>
    public string? PoisonControl { get; set; }

    /// <summary>Who on site must know at once, with telephone or radio channel; 1 to 200 characters.</summary>
    public string? OnSite { get; set; }

    /// <summary>How to call where the telephone has no signal; 1 to 500 characters.</summary>
    public string? WithoutSignal { get; set; }

    /// <summary>Fills the form with what serves; where nobody wrote anything yet, with what guidance advises for the region: it is read and kept by a person all the same.</summary>
    public void Fill(EmergencyNumbers? numbers, GuidanceNow guidance)
    {
        string? Advised(string subject) => guidance.Find(subject, GuidanceSet.Unidentified) is { } entry ? guidance.Text(entry) : null;
        Id = Guid.CreateVersion7();
        EmergencyServices = numbers?.EmergencyServices ?? Advised("emergency-number");
        PoisonControl = numbers?.PoisonControl ?? Advised("poison-control");
        OnSite = numbers?.OnSite;
        WithoutSignal = numbers?.WithoutSignal;
    }

    /// <summary>The numbers as checked on the day of the site; of use only where <paramref name="fields"/> found nothing wrong.</summary>
    /// <param name="site">Which.</param>
    /// <param name="leadId">Who checked.</param>
    /// <param name="now">UTC.</param>
    /// <param name="fields">Receives what is wrong.</param>
    /// <param name="missing">What to say where a field is empty.</param>
    public EmergencyNumbers Read(Records.Site site, Guid leadId, DateTimeOffset now, ModelStateDictionary fields, string missing) => new()
    {
        Id = Id, SiteId = site.Id, LeadId = leadId, KeptAt = now, CheckedOn = DecisionDay.On(now, TimeZoneInfo.FindSystemTimeZoneById(site.Zone)),
        EmergencyServices = fields.ReadLine(nameof(EmergencyServices), EmergencyServices, Bounds.Number, missing),
        PoisonControl = fields.ReadLine(nameof(PoisonControl), PoisonControl, Bounds.Number, missing),
        OnSite = fields.ReadLine(nameof(OnSite), OnSite, Bounds.Name, missing),
        WithoutSignal = fields.ReadLine(nameof(WithoutSignal), WithoutSignal, Bounds.Conditions, missing),
    };
}
