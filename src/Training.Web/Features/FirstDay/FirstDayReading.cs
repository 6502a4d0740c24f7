using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Scoring;
using Training.Web.Settings;
using Training.Web.Shelf;

namespace Training.Web.Features.FirstDay;

/// <summary>Reads how far a provider's first day is. Nothing of it is stored: what is there, is done.</summary>
public sealed class FirstDayReading(RecordsContext records, CourseShelf shelf, TrainingOptions options, FirstDayEnd end)
{
    /// <summary>All tasks in order; empty once all were done: then nobody needs them any more.</summary>
    public async Task<IReadOnlyList<FirstDayStep>> ReadAsync(CancellationToken cancellation)
    {
        if (end.IsReached) return [];
        FirstDayStep[] steps =
        [
            await AddressAsync(cancellation),
            new(FirstDayTask.Provider, await records.ProviderDetails.AnyAsync(cancellation), "/programme/provider#details"),
            await EmployerAsync(cancellation),
            await CoursesAsync(cancellation),
            await RosterAsync(cancellation),
            await ClassDayAsync(cancellation),
            await CertificateAsync(cancellation),
        ];
        if (Array.TrueForAll(steps, step => step.IsDone)) end.Reach();
        return steps;
    }

    private async Task<FirstDayStep> AddressAsync(CancellationToken cancellation)
    {
        var address = options.PublicPage("").AbsoluteUri;
        var isConfirmed = await records.AddressConfirmations.AnyAsync(row => row.Address == address, cancellation);
        return new(FirstDayTask.Address, isConfirmed, "/programme/provider#address");
    }

    private async Task<FirstDayStep> EmployerAsync(CancellationToken cancellation)
    {
        if (await records.EmergencyNumbers.AnyAsync(cancellation)) return new(FirstDayTask.Employer, true, "/programme/employers");
        var site = await records.Sites.OrderBy(row => row.Id).Select(row => (Guid?)row.Id).FirstOrDefaultAsync(cancellation);
        if (site is not null) return new(FirstDayTask.Employer, false, $"/programme/sites/{site}#numbers");
        var employer = await FirstEmployerAsync(cancellation);
        return new(FirstDayTask.Employer, false, employer is null ? "/programme/employers#add" : $"/programme/employers/{employer}#add");
    }

    private async Task<FirstDayStep> CoursesAsync(CancellationToken cancellation)
    {
        if (!await records.CourseChoices.AnyAsync(cancellation)) return new(FirstDayTask.Courses, false, "/programme/courses#use");
        string? waiting = null;
        foreach (var course in shelf.Used)
        {
            if ((await records.AskedAsync(course, cancellation)).Gaps().Count == 0) return new(FirstDayTask.Courses, true, "/programme/courses");
            waiting ??= course.Id;
        }

        return new(FirstDayTask.Courses, false, waiting is null ? "/programme/courses#use" : $"/programme/courses/{waiting}/questions");
    }

    private async Task<FirstDayStep> RosterAsync(CancellationToken cancellation)
    {
        var employer = await FirstEmployerAsync(cancellation);
        return new(
            FirstDayTask.Roster, await records.Employments.AnyAsync(cancellation),
            employer is null ? "/programme/employers#add" : $"/employers/{employer}/roster");
    }

    // Who teaches is chosen from the appointed: without one, that comes first.
    private async Task<FirstDayStep> ClassDayAsync(CancellationToken cancellation)
    {
        if (await records.ClassTeachings.AnyAsync(cancellation)) return new(FirstDayTask.ClassDay, true, "/programme/classes");
        if (await records.Classes.OrderByDescending(row => row.HeldOn).Select(row => (Guid?)row.Id).FirstOrDefaultAsync(cancellation) is not { } day)
            return new(FirstDayTask.ClassDay, false, "/programme/classes#add");
        var isInstructorThere = await records.Appointments.AnyAsync(row => row.Role == AppointedRole.Instructor && row.EndsOn == null, cancellation);
        return new(FirstDayTask.ClassDay, false, isInstructorThere ? $"/programme/classes/{day}" : "/programme/people#add");
    }

    private async Task<FirstDayStep> CertificateAsync(CancellationToken cancellation) =>
        new(FirstDayTask.Certificate, await records.Papers.AnyAsync(cancellation), "/programme/people");

    private Task<Guid?> FirstEmployerAsync(CancellationToken cancellation) =>
        records.Employers.OrderBy(row => row.Id).Select(row => (Guid?)row.Id).FirstOrDefaultAsync(cancellation);
}

/// <summary>Remembers, for as long as this process runs, that the first day is over; after that nobody asks the records any more.</summary>
public sealed class FirstDayEnd
{
    private volatile bool isReached;

    /// <summary>Whether all was done.</summary>
    public bool IsReached => isReached;

    /// <summary>All was done.</summary>
    public void Reach() => isReached = true;
}
