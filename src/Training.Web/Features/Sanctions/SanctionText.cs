namespace Training.Web.Features.Sanctions;

/// <summary>Names the texts of suspensions and withdrawals: SanctionText.resx and SanctionText.es.resx.</summary>
public sealed class SanctionText;
