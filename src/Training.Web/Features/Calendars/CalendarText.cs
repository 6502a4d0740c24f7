namespace Training.Web.Features.Calendars;

/// <summary>Names the texts of calendars and their pages: CalendarText.resx and CalendarText.es.resx.</summary>
public sealed class CalendarText;
