namespace Training.Web.Features.MailAddresses;

/// <summary>Names the texts of somebody's mail address: MailAddressText.resx and MailAddressText.es.resx.</summary>
public sealed class MailAddressText;
