namespace Training.Web.Features.Credentials;

/// <summary>Names the texts about files for programs: CredentialText.resx and CredentialText.es.resx.</summary>
public sealed class CredentialText;
