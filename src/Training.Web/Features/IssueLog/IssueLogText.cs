namespace Training.Web.Features.IssueLog;

/// <summary>Names the texts of the page about the log: IssueLogText.resx and IssueLogText.es.resx.</summary>
public sealed class IssueLogText;
