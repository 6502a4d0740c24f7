namespace Training.Web.Languages;

/// <summary>Names the texts of <see cref="Written"/>: WrittenText.resx and WrittenText.es.resx.</summary>
public sealed class WrittenText;
