using Training.Records;

namespace Training.Web.Demo;

/// <summary>What is said about the demo's classes, who waits for one and who came: kept as in real use.</summary>
/// <param name="data">What is written down.</param>
/// <param name="ids">Of people and classes, by row id.</param>
/// <param name="at">An instant so many days ago, at an hour UTC.</param>
/// <param name="require">Refuses what the code refused.</param>
internal sealed class DemoClasses(DemoData data, IReadOnlyDictionary<string, Guid> ids, Func<int, int, DateTimeOffset> at, Action<string, Kept> require)
{
    private const int OfficeHourUtc = 17;
    private const int EveningHourUtc = 23;

    /// <summary>Keeps all of it.</summary>
    public async Task KeepAsync(RecordsContext records, CancellationToken cancellation)
    {
        var heldDaysAgo = data.Classes.ToDictionary(row => row.Class, row => row.DaysAgo, StringComparer.Ordinal);
        foreach (var row in data.ClassDays)
        {
            // Written two weeks before the class, or today where that is still to come.
            require(row.Class, await records.BriefAsync(
                Guid.CreateVersion7(), ids[row.Class], row.MeetingPlace, row.Kit.Replace('|', '\n'), row.Weather, ids[row.By],
                at(Math.Max(0, heldDaysAgo[row.Class] + 14), OfficeHourUtc), cancellation));
        }

        foreach (var row in data.ClassWaitings)
        {
            require(row.Person, await records.WaitAsync(
                Guid.CreateVersion7(), ids[row.Class], ids[row.Person], ids[row.Person], at(row.AskedDaysAgo, row.HourUtc), cancellation));
        }

        foreach (var row in data.ClassPresences)
        {
            var presence = row.Presence == "came" ? Presence.Came : Presence.DidNotCome;
            require(row.Person, await records.MarkAsync(
                Guid.CreateVersion7(), ids[row.Class], ids[row.Person], presence, row.Reason.Length == 0 ? null : row.Reason, ids[row.By],
                at(heldDaysAgo[row.Class], EveningHourUtc), cancellation));
        }
    }
}
