namespace Training.Web.Features.Files;

/// <summary>Names the texts of tables and audit folders: FilesText.resx and FilesText.es.resx.</summary>
public sealed class FilesText;
