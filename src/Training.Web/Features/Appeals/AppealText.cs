namespace Training.Web.Features.Appeals;

/// <summary>Names the texts of appeals and complaints: AppealText.resx and AppealText.es.resx.</summary>
public sealed class AppealText;
