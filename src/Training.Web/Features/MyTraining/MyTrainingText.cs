namespace Training.Web.Features.MyTraining;

/// <summary>Names the texts of a worker's own pages: MyTrainingText.resx and MyTrainingText.es.resx.</summary>
public sealed class MyTrainingText;
