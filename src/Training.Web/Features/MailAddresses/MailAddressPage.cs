namespace Training.Web.Features.MailAddresses;

/// <summary>Where mail reaches somebody.</summary>
/// <param name="PersonId">Who.</param>
/// <param name="Name">Null where it was erased.</param>
/// <param name="Kept">The address that is kept, or null.</param>
/// <param name="Answer">Why mail does not reach the kept address, or null where nothing is known against it.</param>
/// <param name="Typed">What stands in the field.</param>
public sealed record MailAddressPage(Guid PersonId, string? Name, string? Kept, string? Answer, string? Typed);
