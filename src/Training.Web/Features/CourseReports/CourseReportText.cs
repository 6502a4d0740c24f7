namespace Training.Web.Features.CourseReports;

/// <summary>Names the texts of a course's report: CourseReportText.resx and CourseReportText.es.resx.</summary>
public sealed class CourseReportText;
