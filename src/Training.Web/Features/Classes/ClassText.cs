namespace Training.Web.Features.Classes;

/// <summary>Names the texts of classes: ClassText.resx and ClassText.es.resx.</summary>
public sealed class ClassText;
