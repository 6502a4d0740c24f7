namespace Training.Web.Commands;

/// <summary>Names the texts of <see cref="KeysCommand"/>: KeysText.resx and KeysText.es.resx.</summary>
public sealed class KeysText;
