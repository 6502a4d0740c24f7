namespace Training.Web.Features.Courses;

/// <summary>Names the texts of the course pages: CourseText.resx and CourseText.es.resx.</summary>
public sealed class CourseText;
