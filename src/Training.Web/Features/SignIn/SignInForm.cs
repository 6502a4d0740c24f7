namespace Training.Web.Features.SignIn;

/// <summary>What the sign-in posts.</summary>
public sealed class SignInForm
{
    /// <summary>Sign-in name.</summary>
    public string? Name { get; init; }

    /// <summary>Never shown again.</summary>
    public string? Password { get; init; }

    /// <summary>Path of this site to go to afterwards.</summary>
    public string? Back { get; init; }

    /// <summary>Something that was sent a moment ago could not be kept.</summary>
    public bool Unkept { get; init; }
}
