using System.Globalization;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using Training.Courses;
using Training.Scoring;

namespace Training.Records;

internal static class Instants
{
    /// <summary>What is hashed or stored is truncated (never rounded) to milliseconds, so that it reads back as it was.</summary>
    internal static DateTimeOffset Truncate(DateTimeOffset instant)
    {
        var utc = instant.ToUniversalTime();
        return utc.AddTicks(-(utc.Ticks % TimeSpan.TicksPerMillisecond));
    }
}

internal sealed class UtcInstantConverter() : ValueConverter<DateTimeOffset, DateTime>(
    instant => Instants.Truncate(instant).UtcDateTime,
    stored => new DateTimeOffset(DateTime.SpecifyKind(stored, DateTimeKind.Utc)));

internal sealed class DurationTextConverter() : ValueConverter<Duration, string>(
    duration => duration.ToString(),
    stored => Read(stored))
{
    private static Duration Read(string stored) => Duration.TryParse(stored, out var duration)
        ? duration
        : throw new FormatException($"'{stored}' is no duration.");
}

/// <summary>A seed uses all 64 bits; no engine has an unsigned type, so its bits are kept as they are.</summary>
internal sealed class SeedConverter() : ValueConverter<ulong, long>(
    seed => unchecked((long)seed),
    stored => unchecked((ulong)stored));

/// <summary>A typed number is evidence: kept digit for digit, which no numeric column does alike on three engines.</summary>
internal sealed class NumberTextConverter() : ValueConverter<decimal, string>(
    number => number.ToString(CultureInfo.InvariantCulture),
    stored => decimal.Parse(stored, NumberStyles.Number, CultureInfo.InvariantCulture));

/// <summary>A draw as the one item of a stored list.</summary>
internal sealed class DrawConverter() : ValueConverter<Draw, string>(
    draw => StoredJson.Write(new[] { draw }),
    stored => StoredJson.Read<Draw>(stored)[0]);

internal sealed class TextListConverter() : ValueConverter<IReadOnlyList<string>, string>(
    texts => StoredJson.Write(texts),
    stored => StoredJson.Read<string>(stored));

internal sealed class TextListComparer() : ValueComparer<IReadOnlyList<string>>(
    (left, right) => ReferenceEquals(left, right) || (left != null && right != null && left.SequenceEqual(right)),
    texts => texts.Aggregate(0, (hash, text) => HashCode.Combine(hash, StringComparer.Ordinal.GetHashCode(text))),
    texts => texts);

internal sealed class LanguageListConverter() : ValueConverter<IReadOnlyList<Language>, string>(
    languages => string.Join(' ', languages.Select(language => language.Tag())),
    stored => Read(stored))
{
    private static Language[] Read(string stored) =>
        [.. stored.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(tag => LanguageTags.Find(tag) ?? throw new FormatException($"'{tag}' is no language."))];
}

internal sealed class LanguageListComparer() : ValueComparer<IReadOnlyList<Language>>(
    (left, right) => ReferenceEquals(left, right) || (left != null && right != null && left.SequenceEqual(right)),
    languages => languages.Aggregate(0, (hash, language) => HashCode.Combine(hash, language)),
    languages => languages);
