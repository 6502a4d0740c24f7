namespace Training.Documents.Tests;

/// <summary>Debian's package fonts-lato: faces that an operator might bring.</summary>
internal static class Lato
{
    public static string File(string face) => $"/usr/share/fonts/truetype/lato/Lato-{face}.ttf";

    public static byte[] Bytes(string face) => System.IO.File.Exists(File(face))
        ? System.IO.File.ReadAllBytes(File(face))
        : throw new InvalidOperationException("The face is not installed; these tests need it: apt-get install fonts-lato");
}
