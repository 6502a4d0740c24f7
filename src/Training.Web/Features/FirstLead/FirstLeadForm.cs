namespace Training.Web.Features.FirstLead;

/// <summary>What whoever becomes the first programme lead posts.</summary>
public sealed class FirstLeadForm
{
    /// <summary>The one-time code of the console.</summary>
    public string? Code { get; init; }

    /// <summary>As they write it; 1 to 200 characters.</summary>
    public string? FullName { get; init; }

    /// <summary>Sign-in name of their choice; 1 to 100 characters.</summary>
    public string? Name { get; init; }

    /// <summary>The password chosen.</summary>
    public string? NewPassword { get; init; }

    /// <summary>The same once more: nothing else tells of a slip of the thumb.</summary>
    public string? Again { get; init; }
}
