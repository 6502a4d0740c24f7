namespace Training.Web.Features.SignIn;

/// <summary>What the first sign-in posts.</summary>
public sealed class FirstSignInForm
{
    /// <summary>Sign-in name, as the lead handed it over.</summary>
    public string? Name { get; init; }

    /// <summary>The one-time code.</summary>
    public string? Code { get; init; }

    /// <summary>The password chosen.</summary>
    public string? NewPassword { get; init; }

    /// <summary>The same once more: nothing else tells of a slip of the thumb.</summary>
    public string? Again { get; init; }
}
