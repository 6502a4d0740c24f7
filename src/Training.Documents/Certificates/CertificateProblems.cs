namespace Training.Documents.Certificates;

/// <summary>Codes of what can keep a certificate from being printed. The place names the field.</summary>
public static class CertificateProblems
{
    /// <summary>A required field is empty. No arguments.</summary>
    public const string FieldEmpty = "certificate.field-empty";

    /// <summary>A field is longer than its place on the page. Argument 0: its length; 1: the greatest length.</summary>
    public const string FieldTooLong = "certificate.field-too-long";

    /// <summary>The faces have no glyph for a character. Argument 0: the characters, separated by spaces.</summary>
    public const string CharacterMissing = "certificate.character-missing";
}
