using Training.Web.Settings;

namespace Training.Web.Doors;

/// <summary>Names of the cookies. Behind https they carry the prefix that makes a browser refuse them from anywhere else; on http (the demo) they cannot.</summary>
public sealed class SessionCookie(TrainingOptions options)
{
    /// <summary>Whether cookies travel over https only.</summary>
    public bool IsSecure => options.PublicAddress?.Scheme == Uri.UriSchemeHttps;

    /// <summary>The sign-in.</summary>
    public string Name => Prefix + "training";

    /// <summary>The device.</summary>
    public string DeviceName => Prefix + "training-device";

    /// <summary>The twin of the hidden field in every form.</summary>
    public string FormName => Prefix + "training-form";

    private string Prefix => IsSecure ? "__Host-" : "";
}
