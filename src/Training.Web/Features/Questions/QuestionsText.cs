namespace Training.Web.Features.Questions;

/// <summary>Names the texts of the review of questions: QuestionsText.resx and QuestionsText.es.resx.</summary>
public sealed class QuestionsText;
