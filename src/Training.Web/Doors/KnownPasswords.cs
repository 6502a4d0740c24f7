using Microsoft.AspNetCore.Identity;
using Training.Records;
using Training.Web.Provider;

namespace Training.Web.Doors;

/// <summary>
/// Refuses passwords that a guesser tries first: known ones, words and names in a row, repeats, keyboard walks, and what this provider and
/// this person are called. No rule about capitals, digits or signs, and no outside call.
/// </summary>
/// <remarks>NIST SP 800-63B-4: comparison with common and expected values, no composition rules. The lists and the estimate are those of zxcvbn.</remarks>
public sealed class KnownPasswords(OurProvider provider) : IPasswordValidator<Account>
{
    /// <summary>Bits: a password that is guessed in fewer than 2³⁰ tries is on the lists in all but name.</summary>
    public const double LeastEntropy = 30;

    // The estimate looks at every part of a text; the tail of a very long one adds nothing that matters.
    private const int Estimated = 72;

    /// <inheritdoc/>
    public Task<IdentityResult> ValidateAsync(UserManager<Account> manager, Account user, string? password)
    {
        var text = password ?? "";
        string[] expected = [provider.Name, .. provider.Name.Split(' '), user.UserName ?? "", "snake", "serpiente", "vibora", "rattlesnake", "cascabel"];
        var entropy = Zxcvbn.Zxcvbn.MatchPassword(text.Length > Estimated ? text[..Estimated] : text, expected).Entropy;
        return Task.FromResult(entropy >= LeastEntropy ? IdentityResult.Success : IdentityResult.Failed());
    }
}
