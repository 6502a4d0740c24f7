using Training.Courses;
using Training.Records;

namespace Training.Web.Tests.House;

/// <summary>Invented people of a running site; each call makes new ones.</summary>
internal static class Cast
{
    private static readonly DateOnly Long = new(2020, 1, 1);

    /// <summary>A person with a name.</summary>
    public static async Task<Guid> PersonAsync(this RunningSite site, string name = "Ileana Prado-Whitt", Language language = Language.English)
    {
        var id = Guid.CreateVersion7();
        await site.RecordAsync(async records =>
        {
            records.Add(new Person { Id = id, Language = language });
            records.Add(new PersonName { Id = Guid.CreateVersion7(), PersonId = id, Text = name, StartsOn = Long });
            await records.SaveChangesAsync();
        });
        return id;
    }

    /// <summary>Somebody appointed.</summary>
    public static async Task<Guid> AppointedAsync(this RunningSite site, AppointedRole role, string name = "Marguerite Ashcombe")
    {
        var id = await site.PersonAsync(name);
        await site.AddAsync(new Appointment { Id = Guid.CreateVersion7(), PersonId = id, StartsOn = Long, Role = role, Languages = LanguageTags.All });
        if (role == AppointedRole.Instructor) await site.AddAsync(FileOf(id, await site.PersonAsync("Odalys Ferrante"), site.Shelf.Courses.Select(course => course.Id)));
        return id;
    }

    /// <summary>The file of an instructor who may teach and score everything, and stated so.</summary>
    public static object[] FileOf(Guid instructorId, Guid leadId, IEnumerable<string> courseIds) =>
    [
        .. from courseId in courseIds
           from duty in Enum.GetValues<Certification.Duty>()
           from subject in Enum.GetValues<Subject>()
           select new InstructorCompetence
           {
               Id = Guid.CreateVersion7(), EntryId = Guid.CreateVersion7(), PersonId = instructorId, CourseId = courseId, Duty = duty, Subject = subject, StartsOn = Long,
               EndsOn = new(2030, 12, 31), Evidence = "Scored six sheets together with a lead.", LeadId = leadId, KeptAt = RunningSite.Now,
           },
        new InstructorStatement { Id = Guid.CreateVersion7(), PersonId = instructorId, StatedOn = new(2026, 6, 1), KeptAt = RunningSite.Now },
    ];

    /// <summary>An employer with one site.</summary>
    public static async Task<(Guid EmployerId, Guid SiteId)> EmployerAsync(this RunningSite site, string zone = "America/Denver")
    {
        var (employerId, siteId) = (Guid.CreateVersion7(), Guid.CreateVersion7());
        await site.AddAsync(
            new Employer { Id = employerId, Name = $"Employer {employerId:N}" },
            new Records.Site { Id = siteId, EmployerId = employerId, Name = "Rim Line East", Zone = zone, Region = "US" });
        return (employerId, siteId);
    }

    /// <summary>Somebody who sees that employer's people.</summary>
    public static async Task<Guid> RepresentativeAsync(this RunningSite site, Guid employerId, string name = "Delphine Marrow")
    {
        var id = await site.PersonAsync(name);
        await site.AddAsync(new Representative { Id = Guid.CreateVersion7(), PersonId = id, EmployerId = employerId, StartsOn = Long });
        return id;
    }

    /// <summary>Somebody who works for an employer at a site, with a badge number.</summary>
    public static async Task<Guid> WorkerAsync(this RunningSite site, Guid employerId, Guid siteId, string name = "Ileana Prado-Whitt")
    {
        var id = await site.PersonAsync(name);
        await site.AddAsync(
            new Employment { Id = Guid.CreateVersion7(), PersonId = id, EmployerId = employerId, StartsOn = Long },
            new Badge { Id = Guid.CreateVersion7(), PersonId = id, EmployerId = employerId, StartsOn = Long, Number = $"B-{id:N}" },
            new SiteAssignment { Id = Guid.CreateVersion7(), PersonId = id, SiteId = siteId, StartsOn = Long });
        return id;
    }

    /// <summary>Adds rows in one go.</summary>
    public static Task AddAsync(this RunningSite site, params object[] rows) => site.RecordAsync(records =>
    {
        records.AddRange(rows);
        return records.SaveChangesAsync();
    });
}
