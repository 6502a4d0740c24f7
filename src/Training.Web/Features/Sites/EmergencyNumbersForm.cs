namespace Training.Web.Features.Sites;

/// <summary>The form of whom to call from a site.</summary>
public sealed class EmergencyNumbersForm
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
}
