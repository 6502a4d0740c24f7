using System.ComponentModel.DataAnnotations;

namespace Training.Web.Settings;

/// <summary>Section <c>Training:Verify</c>.</summary>
public sealed class VerifyOptions
{
    /// <summary>How many checks one address may make in a minute, 1 to 10,000. Default 30.</summary>
    [Range(1, 10_000)]
    public int ChecksPerMinute { get; init; } = 30;
}
