namespace Training.Web.Features.Verify;

/// <summary>Names the texts about what a code says without a network: CodeText.resx and CodeText.es.resx.</summary>
public sealed class CodeText;
