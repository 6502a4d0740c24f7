using Training.Web.Features.Verify;

namespace Training.Web.Features.PaperFiles;

/// <summary>What a file turned out to be.</summary>
public enum FileVerdict
{
    /// <summary>Byte for byte a file that we issued.</summary>
    Issued,

    /// <summary>Signed by us and unchanged; the register knows the paper and keeps no such file of it.</summary>
    Signed,

    /// <summary>It bears a good signature of ours, and the register does not know the paper, or others may have the key.</summary>
    NotInRegister,

    /// <summary>Signed by us; changed since.</summary>
    Changed,

    /// <summary>Something was put behind what we signed.</summary>
    Extended,

    /// <summary>Bytes of what we signed are missing.</summary>
    Truncated,

    /// <summary>Not written as we write: a program saved it again, or it was never ours.</summary>
    Rewritten,

    /// <summary>Signed by somebody else.</summary>
    UnknownSigner,

    /// <summary>A PDF without a signature.</summary>
    NotSigned,

    /// <summary>No PDF.</summary>
    NotAPdf,
}

/// <summary>What the page about a file is given.</summary>
/// <param name="Verdict">About the file.</param>
/// <param name="Paper">What the register says today of the paper that it is; null where it is none of ours.</param>
public sealed record FilePage(FileVerdict Verdict, VerifyPage? Paper);

/// <summary>Why a file was not looked at.</summary>
public enum FileRefusal
{
    /// <summary>There was none.</summary>
    Missing,

    /// <summary>It is larger than any paper of ours.</summary>
    TooLarge,

    /// <summary>It took too long to arrive.</summary>
    TooSlow,

    /// <summary>Too many are being looked at.</summary>
    Busy,
}
