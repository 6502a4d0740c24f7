namespace Training.Web.Features.BitePlans;

/// <summary>Names the texts of bite plans on pages: BitePlanText.resx and BitePlanText.es.resx; what the plan itself says comes with the paper.</summary>
public sealed class BitePlanText;
