namespace Training.Web.Features.Refusals;

/// <summary>Names the texts of refusals: RefusalText.resx and RefusalText.es.resx.</summary>
public sealed class RefusalText;
