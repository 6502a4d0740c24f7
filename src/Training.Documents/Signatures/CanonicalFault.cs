namespace Training.Documents.Signatures;

/// <summary>Where a file is written otherwise than we write.</summary>
public enum CanonicalFault
{
    /// <summary>More than one signature.</summary>
    SeveralSignatures,

    /// <summary>The signature's entry: its kind, its ranges, its place or its time.</summary>
    Entry,

    /// <summary>The signature's digits: not hexadecimal in upper case.</summary>
    Digits,

    /// <summary>What fills up the room behind the signature: not zero.</summary>
    Padding,

    /// <summary>The signature itself.</summary>
    Signature,

    /// <summary>The timestamp in it: not one over this signature.</summary>
    Timestamp,
}
