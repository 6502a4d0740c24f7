namespace Training.Web.Features.People;

/// <summary>The form of somebody new.</summary>
public sealed class PersonForm
{
    /// <summary>Of the person, made when the form was.</summary>
    public Guid Id { get; set; }

    /// <summary>As they write it; 1 to 200 characters.</summary>
    public string? Name { get; set; }

    /// <summary>Tag of the language to write to them in.</summary>
    public string? Language { get; set; }

    /// <summary>The button: <see cref="Own"/> for somebody of the provider's own, who works on no site; else null.</summary>
    public string? Work { get; set; }

    /// <summary>Where they work; its employer comes with it.</summary>
    public Guid? SiteId { get; set; }

    /// <summary>Badge number there; 1 to 60 characters.</summary>
    public string? Badge { get; set; }

    /// <summary>First day there, as typed.</summary>
    public string? StartsOn { get; set; }

    /// <summary>One of the provider's own people.</summary>
    public const string Own = "own";
}

/// <summary>The form of another employer or site.</summary>
public sealed class WorkForm
{
    /// <summary>Where they work; its employer comes with it.</summary>
    public Guid? SiteId { get; set; }

    /// <summary>Badge number there; 1 to 60 characters.</summary>
    public string? Badge { get; set; }

    /// <summary>First day there, as typed.</summary>
    public string? StartsOn { get; set; }
}
