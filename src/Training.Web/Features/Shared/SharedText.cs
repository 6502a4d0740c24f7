namespace Training.Web.Features.Shared;

/// <summary>Names the texts of the frame around every page: SharedText.resx and SharedText.es.resx.</summary>
public sealed class SharedText;
