namespace Training.Records;

/// <summary>A row that may change after it was written. Two who change it at once: the second is told, nothing is overwritten.</summary>
public interface IVersioned
{
    /// <summary>Counted up by <see cref="RecordsContext"/> on every change; the concurrency token on every engine.</summary>
    int Version { get; set; }
}
