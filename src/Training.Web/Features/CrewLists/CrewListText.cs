namespace Training.Web.Features.CrewLists;

/// <summary>Names the texts of crews' lists: CrewListText.resx and CrewListText.es.resx.</summary>
public sealed class CrewListText;
