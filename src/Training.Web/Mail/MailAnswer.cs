namespace Training.Web.Mail;

/// <summary>What became of one try to send a mail. A closed family.</summary>
public abstract record MailAnswer
{
    private MailAnswer()
    {
    }

    /// <summary>The mail server took it: delivering it is its task now.</summary>
    public sealed record Accepted : MailAnswer;

    /// <summary>The mail server refuses this address for good (RFC 5321, a reply of the 500s to RCPT).</summary>
    /// <param name="Said">Its words.</param>
    public sealed record AddressRefused(string Said) : MailAnswer;

    /// <summary>Not taken this time: no connection, no sign-in, a server that is busy or does not want the message.</summary>
    /// <param name="Said">Its words, or those of the network.</param>
    public sealed record NotAccepted(string Said) : MailAnswer;
}
