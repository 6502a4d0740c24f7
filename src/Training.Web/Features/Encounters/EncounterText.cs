namespace Training.Web.Features.Encounters;

/// <summary>Names the texts of encounters: EncounterText.resx and EncounterText.es.resx.</summary>
public sealed class EncounterText;
