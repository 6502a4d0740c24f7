namespace Training.Web.Features.SignInCodes;

/// <summary>What the pages of one-time codes are given.</summary>
/// <param name="PersonId">For whom.</param>
/// <param name="Name">Their name.</param>
/// <param name="SignInName">What they sign in with; as typed where it could not be kept.</param>
/// <param name="HasAccount">Whether the sign-in name is fixed.</param>
/// <param name="Code">The code, shown this once; null before it is made.</param>
/// <param name="EndsAt">When it stops working, in the visitor's zone.</param>
public sealed record SignInCodePage(Guid PersonId, string Name, string SignInName, bool HasAccount, string? Code, DateTimeOffset EndsAt);
