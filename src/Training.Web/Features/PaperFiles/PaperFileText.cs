namespace Training.Web.Features.PaperFiles;

/// <summary>Names the texts of the check of files: PaperFileText.resx and PaperFileText.es.resx.</summary>
public sealed class PaperFileText;
