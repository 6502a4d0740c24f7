namespace Training.Web.Features.Sanctions;

/// <summary>The form of a suspension, a reinstatement or a proposal to withdraw.</summary>
public sealed class SanctionForm
{
    /// <summary>Made when the form was: the same twice is one.</summary>
    public Guid Id { get; set; }

    /// <summary>Why; 1 to 2,000 characters.</summary>
    public string? Reason { get; set; }

    /// <summary>By when a suspension is to be settled, as typed.</summary>
    public string? Deadline { get; set; }

    /// <summary>Which form of the page it was: the scheme and what is done, such as <c>handler-suspension</c>; empty for none.</summary>
    public string Place { get; set; } = "";
}
