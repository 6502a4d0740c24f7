namespace Training.Web.Features.Provider;

/// <summary>Names the texts of what the provider says of itself: ProviderText.resx and ProviderText.es.resx.</summary>
public sealed class ProviderText;
