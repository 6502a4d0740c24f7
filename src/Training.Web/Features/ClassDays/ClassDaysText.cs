namespace Training.Web.Features.ClassDays;

/// <summary>Names the texts of the class day pages: ClassDaysText.resx and ClassDaysText.es.resx.</summary>
public sealed class ClassDaysText;
