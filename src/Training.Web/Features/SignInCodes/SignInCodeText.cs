namespace Training.Web.Features.SignInCodes;

/// <summary>Names the texts of one-time codes: SignInCodeText.resx and SignInCodeText.es.resx.</summary>
public sealed class SignInCodeText;
