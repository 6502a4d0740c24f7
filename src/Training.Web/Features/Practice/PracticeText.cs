namespace Training.Web.Features.Practice;

/// <summary>Names the texts of practice: PracticeText.resx and PracticeText.es.resx.</summary>
public sealed class PracticeText;
