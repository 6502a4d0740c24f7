using MimeKit;
using Training.Records;

namespace Training.Web.Mail;

/// <summary>What is taken for a mail address, wherever one is typed or read.</summary>
public static class MailAddressSyntax
{
    /// <summary>
    /// Whether a text is one mailbox and nothing around it: no name, no second address, and a dot in its domain (RFC 5322, 3.4.1). Whether it
    /// works, only mail can tell.
    /// </summary>
    public static bool IsOne(string text) =>
        text.Length <= Bounds.MailAddress && MailboxAddress.TryParse(text, out var mailbox) && mailbox.Address == text
        && text.LastIndexOf('@') is > 0 and var at && text.IndexOf('.', at) > at + 1 && text[^1] != '.';
}
