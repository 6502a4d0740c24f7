namespace Training.Web.Features.SignIn;

/// <summary>Names the texts of sign-in: SignInText.resx and SignInText.es.resx.</summary>
public sealed class SignInText;
