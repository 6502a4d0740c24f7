namespace Training.Web.Features.People;

/// <summary>Names the texts of people: PersonText.resx and PersonText.es.resx.</summary>
public sealed class PersonText;
