namespace Training.Web.Features.AuditFolders;

/// <summary>Names the texts of audit folders: AuditFoldersText.resx and AuditFoldersText.es.resx.</summary>
public sealed class AuditFoldersText;
