namespace Training.Web.Features.TrainingChanges;

/// <summary>Names the texts of what changed since somebody trained: TrainingChangesText.resx and TrainingChangesText.es.resx.</summary>
public sealed class TrainingChangesText;
