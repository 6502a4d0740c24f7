namespace Training.Web.Features.Provider;

/// <summary>What the page of the provider is given.</summary>
/// <param name="PublicAddress">As the server was started with it.</param>
/// <param name="IsConfirmed">Whether a lead said that this very address is right.</param>
/// <param name="IsKept">Whether a lead ever kept details; until then those of the settings serve.</param>
/// <param name="Form">As it serves, or as typed.</param>
public sealed record ProviderPage(Uri PublicAddress, bool IsConfirmed, bool IsKept, ProviderForm Form);
