using Training.Records;

namespace Training.Web.Features.Sittings;

/// <summary>What the form that starts a quiz says about reading aloud. It never stands in the way of a start: what is not said is "read alone".</summary>
public sealed class ReadOutForm
{
    /// <summary><c>device</c> or <c>person</c>; anything else: read alone.</summary>
    public string? Aid { get; set; }

    /// <summary>Role of the person who reads it out; a name is not needed.</summary>
    public string? ReadBy { get; set; }

    /// <summary>What is kept. A role longer than its place is cut: it is a remark, and a start must not fail over it.</summary>
    public ReadOut Read() => Aid switch
    {
        "device" => new(ReadingAid.Device, null),
        "person" => new(ReadingAid.Person, (ReadBy ?? "").Trim() is { Length: > 0 } role ? role[..Math.Min(role.Length, Bounds.Name)] : null),
        _ => ReadOut.Nobody,
    };
}
