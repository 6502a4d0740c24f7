using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Shelf;

namespace Training.Web.Features.Panels;

/// <summary>Reads a panel together with the text that it judges.</summary>
public sealed class PanelReading(RecordsContext records, CoursesByHash courses)
{
    /// <summary>The panel and its text, or null.</summary>
    public async Task<JudgedPanel?> FindAsync(Guid panelId, CancellationToken cancellation) =>
        await records.FindPanelAsync(panelId, cancellation) is { } file
            && await courses.FindAsync(records, file.Panel.CourseId, file.Panel.CourseHash, cancellation) is { } course
                ? new(file, course)
                : null;

    /// <summary>Names of the judges by judge and of the leads by person, as they stood on a day.</summary>
    public async Task<IReadOnlyDictionary<Guid, string>> NamesOfAsync(PanelFile file, DateOnly day, CancellationToken cancellation)
    {
        var people = file.Judges.Select(judge => judge.PersonId).OfType<Guid>().Append(file.Panel.LeadId).Concat(file.Adoptions.Select(row => row.LeadId));
        var names = new Dictionary<Guid, string>(await records.NamesOfAsync(people, day, cancellation));
        foreach (var judge in file.Judges)
        {
            if ((judge.PersonId is { } person ? names.GetValueOrDefault(person) : judge.OutsiderName) is { } name) names[judge.Id] = name;
        }

        return names;
    }

    /// <summary>Panels that wait for a word of a person.</summary>
    public Task<IReadOnlyList<Panel>> ToRateAsync(Guid personId, CancellationToken cancellation) => records.PanelsToRateAsync(personId, cancellation);

    /// <summary>Judges for whom a lead types: outsiders, and people who cannot sign in.</summary>
    public async Task<IReadOnlySet<Guid>> TypedForAsync(PanelFile file, CancellationToken cancellation)
    {
        var people = file.Judges.Select(judge => judge.PersonId).OfType<Guid>().ToList();
        var signIn = await records.Set<Account>().Where(account => people.Contains(account.PersonId)).Select(account => account.PersonId).ToListAsync(cancellation);
        return file.Judges.Where(judge => judge.PersonId is not { } person || !signIn.Contains(person)).Select(judge => judge.Id).ToHashSet();
    }

    /// <summary>Who teaches, scores or leads on a day, by name; no more than a list of instructors holds.</summary>
    public async Task<IReadOnlyList<(Guid Id, string Name)>> PeopleAsync(DateOnly day, CancellationToken cancellation)
    {
        var ids = await Appointed(day).Select(row => row.PersonId).Distinct().OrderBy(id => id).Take(InstructorQueries.Most).ToListAsync(cancellation);
        var names = await records.NamesOfAsync(ids, day, cancellation);
        return [.. names.Select(name => (name.Key, name.Value)).OrderBy(name => name.Value, StringComparer.CurrentCulture)];
    }

    /// <summary>Whether somebody teaches, scores or leads on a day.</summary>
    public Task<bool> MayJudgeAsync(Guid personId, DateOnly day, CancellationToken cancellation) =>
        Appointed(day).AnyAsync(row => row.PersonId == personId, cancellation);

    /// <summary>First sittings of the quiz by points; empty for a checklist.</summary>
    public async Task<IReadOnlyList<int>> ScoresAsync(JudgedPanel judged, CancellationToken cancellation) =>
        judged.Checklist is not null ? [] : await records.FirstScoresAsync(judged.Course.Quiz.Id, judged.FormLength, cancellation);

    /// <summary>Instructors' impressions at the checklist that is judged, in its text; empty for a quiz.</summary>
    public async Task<IReadOnlyList<SheetImpression>> ImpressionsAsync(JudgedPanel judged, CancellationToken cancellation) =>
        judged.Checklist is { } checklist ? await records.ImpressionsAsync(checklist.Id, checklist.Version, cancellation) : [];

    /// <summary>How often each question that is judged was asked and answered right; empty for a checklist.</summary>
    public async Task<IReadOnlyDictionary<string, (int Asked, int Right)>> SharesAsync(JudgedPanel judged, CancellationToken cancellation) =>
        await records.SharesRightAsync(
            judged.Checklist is not null ? new Dictionary<string, string>(StringComparer.Ordinal)
                : judged.Course.Questions.Where(question => judged.File.Panel.ItemIds.Contains(question.Id, StringComparer.Ordinal))
                    .ToDictionary(question => question.Id, question => question.Version, StringComparer.Ordinal),
            cancellation);

    private IQueryable<Appointment> Appointed(DateOnly day) =>
        records.Appointments.Where(row => row.StartsOn <= day && (row.EndsOn == null || row.EndsOn >= day));
}
