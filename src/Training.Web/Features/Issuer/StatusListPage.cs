namespace Training.Web.Features.Issuer;

/// <summary>A status list as it is served.</summary>
/// <param name="Token">The signed credential.</param>
/// <param name="AsOf">Which state it tells, UTC.</param>
/// <param name="Kid">Names the key that signed it.</param>
public sealed record StatusListPage(string Token, DateTimeOffset AsOf, string Kid);
