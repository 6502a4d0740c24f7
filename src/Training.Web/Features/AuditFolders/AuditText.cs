using System.Globalization;
using Microsoft.Extensions.Localization;

namespace Training.Web.Features.AuditFolders;

/// <summary>How a folder writes names, numbers and instants.</summary>
internal static class AuditText
{
    /// <summary>A person's name, or that it was erased.</summary>
    public static string NameOf(this IStringLocalizer<AuditFoldersText> text, IReadOnlyDictionary<Guid, string> names, Guid id) =>
        names.GetValueOrDefault(id) ?? text["NameErased"].Value;

    /// <summary>Digits alone: the same in each language.</summary>
    public static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>To the second, in UTC.</summary>
    public static string Instant(DateTimeOffset instant) => instant.ToString("yyyy-MM-dd HH:mm:ss 'UTC'", CultureInfo.InvariantCulture);
}
