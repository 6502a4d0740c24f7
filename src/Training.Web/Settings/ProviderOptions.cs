using System.ComponentModel.DataAnnotations;

namespace Training.Web.Settings;

/// <summary>Section <c>Training:Provider</c>: the body that trains and certifies, as pages and papers name it.</summary>
public sealed class ProviderOptions
{
    /// <summary>Name as printed. Default <c>Training provider</c>; put yours.</summary>
    [Required, StringLength(120)]
    public string Name { get; init; } = "Training provider";

    /// <summary>Postal address as printed, on one line. Default: none.</summary>
    [StringLength(300)]
    public string Address { get; init; } = "";

    /// <summary>Time zone of calendar days where no site is involved, by its IANA name. Default <c>America/Denver</c>.</summary>
    [Required]
    public string TimeZone { get; init; } = "America/Denver";

    /// <summary>Region whose guidance public pages show, such as <c>US</c> or <c>AU</c>. Default <c>US</c>.</summary>
    [Required, StringLength(20)]
    public string Region { get; init; } = "US";
}
