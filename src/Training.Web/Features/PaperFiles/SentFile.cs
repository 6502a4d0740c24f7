namespace Training.Web.Features.PaperFiles;

/// <summary>What came with a form for a file. A closed family.</summary>
public abstract record SentFile
{
    private SentFile()
    {
    }

    /// <summary>A file.</summary>
    public sealed record Read(ReadOnlyMemory<byte> Bytes) : SentFile;

    /// <summary>No file, or an empty one, or no form at all.</summary>
    public sealed record Missing : SentFile;

    /// <summary>More than <see cref="FileReading.MostBytes"/>.</summary>
    public sealed record TooLarge : SentFile;
}
