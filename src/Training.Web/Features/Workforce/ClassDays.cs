using Training.Records;

namespace Training.Web.Features.Workforce;

/// <summary>Class days from tomorrow on: today's is too late to send somebody to.</summary>
/// <param name="Ahead">At the employer's sites, the earliest first.</param>
/// <param name="Seats">Those that its people have already, the earliest first.</param>
public sealed record ClassDays(IReadOnlyList<ClassAhead> Ahead, ILookup<Guid, SeatAhead> Seats)
{
    /// <summary>Reads the class days of an employer, and the seats of some of its people.</summary>
    public static async Task<ClassDays> ReadAsync(
        RecordsContext records, Guid employerId, IReadOnlyList<Guid> personIds, DateOnly today, CancellationToken cancellation)
    {
        var ahead = await records.ClassesAheadAsync(employerId, today.AddDays(1), cancellation);
        var seats = await records.SeatsAheadAsync(personIds, today.AddDays(1), cancellation);
        return new(ahead, seats.ToLookup(seat => seat.PersonId));
    }
}
