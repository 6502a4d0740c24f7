namespace Training.Web.Features.Provider;

/// <summary>The form of what the provider is called and where it sits.</summary>
public sealed class ProviderForm
{
    /// <summary>Made when the form was: the same twice is one row.</summary>
    public Guid Id { get; set; }

    /// <summary>1 to 120 characters.</summary>
    public string? Name { get; set; }

    /// <summary>Postal address, 1 to 300 characters.</summary>
    public string? Address { get; set; }

    /// <summary>IANA time zone, such as <c>America/Phoenix</c>.</summary>
    public string? Zone { get; set; }

    /// <summary>Region whose guidance public pages show, such as <c>US</c>.</summary>
    public string? Region { get; set; }
}
