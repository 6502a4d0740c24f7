using System.Collections.Concurrent;

namespace Training.Web.Doors;

/// <summary>
/// Slows guessing down without letting anybody lock a crew out. Failures are counted for three things: an account tried from devices that
/// never signed in to it, an account tried from one that did, and an address. A guesser exhausts the first and the third; the person at
/// their own phone or crew tablet uses the second and still gets in.
/// </summary>
/// <remarks>Rule: docs/security.md, "Sign-in". Counts live in this process: each node has its own, and a restart forgets them.</remarks>
public sealed class SignInThrottle(TimeProvider clock)
{
    /// <summary>After so many failures the wait begins; counts are forgotten after it.</summary>
    public static readonly TimeSpan Window = TimeSpan.FromMinutes(15);

    /// <summary>Failures allowed in a window for an account from devices unknown to it.</summary>
    public const int FromStrangers = 10;

    /// <summary>Failures allowed in a window for an account from one device that it knows.</summary>
    public const int FromKnownDevice = 20;

    /// <summary>Failures allowed in a window from one address: a crew shares one, and mistypes.</summary>
    public const int FromAddress = 60;

    // Beyond so many counts at once the old ones are thrown out; a flood of invented names must not fill the memory.
    private const int MostCounts = 100_000;

    private readonly ConcurrentDictionary<string, Count> counts = new(StringComparer.Ordinal);

    /// <summary>How long this try must wait, or null where it may go ahead.</summary>
    /// <param name="name">Compared form of the sign-in name, known or not.</param>
    /// <param name="device">The device, where it signed in to this account before; else null.</param>
    /// <param name="address">Who asks.</param>
    public TimeSpan? WaitOf(string name, string? device, string address) =>
        Limits(name, device, address).Select(limit => WaitOf(limit.Key, limit.Most)).Max();

    /// <summary>Counts a failure.</summary>
    public void Fail(string name, string? device, string address)
    {
        var now = clock.GetUtcNow();
        if (counts.Count > MostCounts) Sweep(now);
        foreach (var (key, _) in Limits(name, device, address))
        {
            counts.AddOrUpdate(key, _ => new(1, now), (_, old) => now - old.Since >= Window ? new(1, now) : old with { Failures = old.Failures + 1 });
        }
    }

    private static (string Key, int Most)[] Limits(string name, string? device, string address) => device is null
        ? [($"name {name}", FromStrangers), ($"address {address}", FromAddress)]
        : [($"device {device} {name}", FromKnownDevice)];

    private TimeSpan? WaitOf(string key, int most)
    {
        if (!counts.TryGetValue(key, out var count) || count.Failures < most) return null;
        var left = count.Since + Window - clock.GetUtcNow();
        return left > TimeSpan.Zero ? left : null;
    }

    private void Sweep(DateTimeOffset now)
    {
        foreach (var (key, count) in counts)
        {
            if (now - count.Since >= Window || counts.Count > MostCounts) counts.TryRemove(key, out _);
        }
    }

    private sealed record Count(int Failures, DateTimeOffset Since);
}
