namespace Training.Web.Features.Employers;

/// <summary>The form of a new employer.</summary>
public sealed class EmployerForm
{
    /// <summary>Made when the form was: the same twice is one employer.</summary>
    public Guid Id { get; set; }

    /// <summary>1 to 200 characters.</summary>
    public string? Name { get; set; }
}

/// <summary>The form of a new site.</summary>
public sealed class SiteForm
{
    /// <summary>Made when the form was: the same twice is one site.</summary>
    public Guid Id { get; set; }

    /// <summary>1 to 200 characters.</summary>
    public string? Name { get; set; }

    /// <summary>IANA time zone, such as <c>America/Phoenix</c>.</summary>
    public string? Zone { get; set; }

    /// <summary>Region of its guidance, such as <c>US</c>.</summary>
    public string? Region { get; set; }
}
