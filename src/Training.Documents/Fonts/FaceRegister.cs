using System.Collections.Concurrent;
using PdfSharp.Fonts;

namespace Training.Documents.Fonts;

/// <summary>Every face that this process prints with, by name. The PDF package allows one such register a process, set before its first font.</summary>
internal sealed class FaceRegister : IFontResolver
{
    private static readonly Lazy<FaceRegister> Installed = new(Install);

    private readonly ConcurrentDictionary<string, byte[]> _faces = new(StringComparer.OrdinalIgnoreCase);

    private FaceRegister()
    {
    }

    /// <summary>Makes a face known. The name follows from the bytes, so adding it again changes nothing.</summary>
    public static void Add(string name, byte[] face) => Installed.Value._faces.TryAdd(name, face);

    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) =>
        _faces.ContainsKey(familyName) ? new(familyName) : null;

    public byte[]? GetFont(string faceName) => _faces.GetValueOrDefault(faceName);

    private static FaceRegister Install()
    {
        if (GlobalFontSettings.FontResolver is not null)
        {
            throw new InvalidOperationException("Another font resolver is installed in this process; papers would be set in its faces.");
        }

        var register = new FaceRegister();
        GlobalFontSettings.FontResolver = register;
        return register;
    }
}
