namespace Training.Web.Features.Programme;

/// <summary>Names the texts of a programme lead's first page: ProgrammeText.resx and ProgrammeText.es.resx.</summary>
public sealed class ProgrammeText;
