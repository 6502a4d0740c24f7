using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Shelf;

namespace Training.Web.Features.Workforce;

/// <summary>The training matrix: workers by schemes, filtered and sorted. Its rows are read as they are shown.</summary>
/// <param name="Employer">Whose.</param>
/// <param name="Filter">What was chosen.</param>
/// <param name="AllSchemes">Schemes to choose from.</param>
/// <param name="Schemes">Columns.</param>
/// <param name="Total">People whom the employer has.</param>
/// <param name="Count">People whom the filter admits.</param>
public sealed record Matrix(
    SeenEmployer Employer,
    MatrixFilter Filter,
    IReadOnlyList<NamedScheme> AllSchemes,
    IReadOnlyList<NamedScheme> Schemes,
    int Total,
    int Count)
{
    /// <summary>Rows of one page.</summary>
    public const int RowsAPage = 50;

    private const int RowsABatch = 500;

    /// <summary>At least 1.</summary>
    public int Pages => Math.Max(1, (Count + RowsAPage - 1) / RowsAPage);

    /// <summary>The matrix of an employer; null where the filter names a scheme that there is not.</summary>
    public static async Task<Matrix?> FindAsync(
        RecordsContext records, SeenEmployer employer, MatrixFilter filter, CourseShelf shelf, Language language, CancellationToken cancellation)
    {
        // A scheme whose course was taken off the shelf is still held by somebody.
        var ids = shelf.Used.Select(course => course.Id)
            .Union(await records.SchemesHeldAsync(employer.Id, employer.Today, cancellation), StringComparer.Ordinal);
        NamedScheme[] all = [.. ids.Select(id => new NamedScheme(id, shelf.TitleOf(id, language)))];
        NamedScheme[] shown = filter.SchemeId is null ? all : [.. all.Where(scheme => scheme.Id == filter.SchemeId)];
        if (shown.Length == 0 && filter.SchemeId is not null) return null;

        var matrix = new Matrix(
            employer, filter, all, shown, await records.CountEmployedAsync(employer.Id, null, employer.Today, cancellation), Count: 0);
        return matrix with { Count = await records.CountAsync(matrix.Choice, cancellation) };
    }

    /// <summary>The rows of a page.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="page">1 for the first.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public async Task<IReadOnlyList<MatrixRow>> RowsOfAsync(RecordsContext records, int page, CancellationToken cancellation) =>
        await RowsOfAsync(records, await records.PeopleAsync(Choice, (page - 1) * RowsAPage, RowsAPage, cancellation), cancellation);

    /// <summary>All rows, at most <see cref="WorkforceQueries.MostPeople"/>; what they hold is read as they are asked for.</summary>
    public async IAsyncEnumerable<MatrixRow> AllRowsAsync(
        RecordsContext records, [System.Runtime.CompilerServices.EnumeratorCancellation] CancellationToken cancellation)
    {
        foreach (var batch in (await records.PeopleAsync(Choice, 0, WorkforceQueries.MostPeople, cancellation)).Chunk(RowsABatch))
        {
            foreach (var row in await RowsOfAsync(records, batch, cancellation)) yield return row;
        }
    }

    private PeopleChoice Choice => new()
    {
        EmployerId = Employer.Id, Day = Employer.Today, SiteId = Filter.SiteId, Text = Filter.Text,
        SchemeIds = [.. Schemes.Select(scheme => scheme.Id)], Standing = Filter.Standing, Order = Filter.Order,
    };

    private async Task<IReadOnlyList<MatrixRow>> RowsOfAsync(RecordsContext records, IReadOnlyList<EmployedPerson> people, CancellationToken cancellation)
    {
        var held = (await records.HeldCertificationsAsync([.. people.Select(person => person.PersonId)], cancellation))
            .ToDictionary(one => (one.PersonId, one.SchemeId));
        return [.. people.Select(person => new MatrixRow(person, [.. Schemes.Select(scheme => CellOf(held.GetValueOrDefault((person.PersonId, scheme.Id))))]))];
    }

    private MatrixCell CellOf(HeldCertification? held) =>
        held is null ? new(null, null) : new(Standings.On(held, Employer.Today), Standings.ExpiresOn(held, Employer.Today));
}

/// <summary>A scheme with its title in the page's language.</summary>
public sealed record NamedScheme(string Id, string Title);

/// <summary>One person's row: a cell for each column.</summary>
public sealed record MatrixRow(EmployedPerson Person, IReadOnlyList<MatrixCell> Cells);

/// <summary>How somebody stands under a scheme; both null where they never held it.</summary>
/// <param name="Standing">Today.</param>
/// <param name="ExpiresOn">Last day of the period that today belongs to.</param>
public sealed record MatrixCell(Standing? Standing, DateOnly? ExpiresOn);

/// <summary>One page of the matrix.</summary>
/// <param name="Matrix">All of it.</param>
/// <param name="Page">1 for the first.</param>
/// <param name="Rows">Of the page.</param>
/// <param name="Crews">Of the chosen site; none where all sites are shown.</param>
public sealed record MatrixPage(Matrix Matrix, int Page, IReadOnlyList<MatrixRow> Rows, IReadOnlyList<Crew> Crews)
{
    /// <summary>The chosen site; null where all are shown.</summary>
    public Records.Site? Site => Matrix.Employer.Sites.FirstOrDefault(site => site.Id == Matrix.Filter.SiteId);
}
