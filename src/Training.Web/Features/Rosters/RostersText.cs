namespace Training.Web.Features.Rosters;

/// <summary>Names the texts of rosters: RostersText.resx and RostersText.es.resx.</summary>
public sealed class RostersText;
