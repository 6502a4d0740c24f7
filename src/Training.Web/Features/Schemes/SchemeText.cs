namespace Training.Web.Features.Schemes;

/// <summary>Names the texts of the page of a scheme's version: SchemeText.resx and SchemeText.es.resx.</summary>
public sealed class SchemeText;
