namespace Training.Web.Features.Reminders;

/// <summary>Names the texts of reminders, weekly summaries and their page: RemindersText.resx and RemindersText.es.resx.</summary>
public sealed class RemindersText;
