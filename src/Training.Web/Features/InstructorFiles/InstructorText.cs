namespace Training.Web.Features.InstructorFiles;

/// <summary>Names the texts of instructors' files: InstructorText.resx and InstructorText.es.resx.</summary>
public sealed class InstructorText;
