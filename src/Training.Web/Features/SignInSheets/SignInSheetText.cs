namespace Training.Web.Features.SignInSheets;

/// <summary>Names the texts of sign-in sheets: SignInSheetText.resx and SignInSheetText.es.resx.</summary>
public sealed class SignInSheetText;
