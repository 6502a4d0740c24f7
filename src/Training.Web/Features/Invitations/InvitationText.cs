namespace Training.Web.Features.Invitations;

/// <summary>Names the texts of mails about classes: InvitationText.resx and InvitationText.es.resx.</summary>
public sealed class InvitationText;
