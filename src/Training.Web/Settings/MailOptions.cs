using System.ComponentModel.DataAnnotations;

namespace Training.Web.Settings;

/// <summary>How the connection to a mail server is protected.</summary>
public enum MailSecurity
{
    /// <summary>Begins in the clear and is encrypted before anything is said (RFC 3207).</summary>
    StartTls,

    /// <summary>Encrypted from the first byte (RFC 8314).</summary>
    Tls,

    /// <summary>Not at all: for a server on the same machine.</summary>
    None,
}

/// <summary>Section <c>Training:Mail</c>: the server that takes our mail. Without a host, mails are written as files into the data folder.</summary>
public sealed class MailOptions
{
    /// <summary>Name of the mail server. Empty, the default: mails become files.</summary>
    public string Host { get; init; } = "";

    /// <summary>Its port. Default 587, that of message submission (RFC 6409).</summary>
    [Range(1, 65535)]
    public int Port { get; init; } = 587;

    /// <summary>How the connection is protected. Default <see cref="MailSecurity.StartTls"/>.</summary>
    [Required]
    public MailSecurity Security { get; init; } = MailSecurity.StartTls;

    /// <summary>Name to sign in with. Empty, the default: the server asks for none.</summary>
    public string User { get; init; } = "";

    /// <summary>Password to that name.</summary>
    public string Password { get; init; } = "";

    /// <summary>Address that mails come from, and that answers and returned mail go to. Required with <see cref="Host"/>.</summary>
    public string From { get; init; } = "";
}
