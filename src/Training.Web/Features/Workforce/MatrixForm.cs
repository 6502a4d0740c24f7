namespace Training.Web.Features.Workforce;

/// <summary>What the form above the training matrix sends.</summary>
public sealed class MatrixForm
{
    /// <summary>Id of a site; empty for all.</summary>
    public string? Site { get; init; }

    /// <summary>Id of a scheme; empty for all.</summary>
    public string? Scheme { get; init; }

    /// <summary>Name of a <see cref="StandingChoice"/>; empty for all.</summary>
    public string? Standing { get; init; }

    /// <summary>Reads the standing; false where there is none of that name.</summary>
    public bool TryReadStanding(out StandingChoice? standing)
    {
        standing = null;
        if (string.IsNullOrEmpty(Standing)) return true;
        // A number would parse too, also one that names nothing.
        standing = Enum.GetValues<StandingChoice>().Cast<StandingChoice?>().FirstOrDefault(choice => choice.ToString() == Standing);
        return standing is not null;
    }
}
