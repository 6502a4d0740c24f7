namespace Training.Web.Features.PaperRuns;

/// <summary>Names the words of the pages of paper runs.</summary>
public sealed class PaperRunText;
