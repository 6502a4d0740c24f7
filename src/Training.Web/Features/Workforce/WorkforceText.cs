namespace Training.Web.Features.Workforce;

/// <summary>Names the texts of this feature: WorkforceText.resx and WorkforceText.es.resx.</summary>
public sealed class WorkforceText;
