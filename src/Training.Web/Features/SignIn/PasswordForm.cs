namespace Training.Web.Features.SignIn;

/// <summary>What a change of password posts.</summary>
public sealed class PasswordForm
{
    /// <summary>The password in use.</summary>
    public string? Current { get; init; }

    /// <summary>The password chosen.</summary>
    public string? NewPassword { get; init; }

    /// <summary>The same once more.</summary>
    public string? Again { get; init; }
}
