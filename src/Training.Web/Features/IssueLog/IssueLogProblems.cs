namespace Training.Web.Features.IssueLog;

/// <summary>What can be wrong with the log of what was issued.</summary>
public static class IssueLogProblems
{
    /// <summary>A leaf is not what its stored hash says. Arguments: the leaf.</summary>
    public const string LeafChanged = "log.leaf-changed";

    /// <summary>A stored hash is not what the leaves lead to. Arguments: the leaf in whose row it stands, how many leaves it is about.</summary>
    public const string NodeChanged = "log.node-changed";

    /// <summary>A row holds more or fewer hashes than its leaf completed, or a row is missing. Arguments: the leaf.</summary>
    public const string RowMissing = "log.row-missing";

    /// <summary>A signed head is over more leaves than there are. Arguments: leaves, leaves of the head.</summary>
    public const string Truncated = "log.truncated";

    /// <summary>A signed head has another root. Arguments: leaves of the head.</summary>
    public const string RootDiffers = "log.root-differs";

    /// <summary>A head is not signed by a key of the issuer that was believed then. Arguments: leaves of the head, its timestamp.</summary>
    public const string HeadNotSigned = "log.head-not-signed";

    /// <summary>The records say something else of a leaf than it commits to. Arguments: the leaf, the serial.</summary>
    public const string OpeningDiffers = "log.opening-differs";

    /// <summary>A file holds no head. Arguments: the file.</summary>
    public const string HeadUnreadable = "log.head-unreadable";
}
