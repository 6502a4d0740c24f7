using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Shelf;

namespace Training.Web.Features.Workforce;

/// <summary>The training matrix: workers by schemes, filtered.</summary>
/// <param name="Workforce">Of which employer.</param>
/// <param name="Filter">What was chosen.</param>
/// <param name="AllSchemes">Schemes to choose from.</param>
/// <param name="Schemes">Columns.</param>
/// <param name="Rows">All rows that the filter admits, by name.</param>
public sealed record Matrix(
    EmployedPeople Workforce,
    MatrixFilter Filter,
    IReadOnlyList<NamedScheme> AllSchemes,
    IReadOnlyList<NamedScheme> Schemes,
    IReadOnlyList<MatrixRow> Rows)
{
    /// <summary>Rows of one page.</summary>
    public const int RowsAPage = 50;

    /// <summary>At least 1.</summary>
    public int Pages => Math.Max(1, (Rows.Count + RowsAPage - 1) / RowsAPage);

    /// <summary>The matrix of an employer; null where the filter names a scheme that there is not.</summary>
    public static Matrix? Of(EmployedPeople workforce, MatrixFilter filter, CourseShelf shelf, Language language)
    {
        // A scheme whose course was taken off the shelf is still held by somebody.
        var ids = shelf.Used.Select(course => course.Id)
            .Concat(workforce.People.SelectMany(person => workforce.Held[person.PersonId]).Select(held => held.SchemeId).Order(StringComparer.Ordinal))
            .Distinct(StringComparer.Ordinal);
        NamedScheme[] all = [.. ids.Select(id => new NamedScheme(id, shelf.TitleOf(id, language)))];
        NamedScheme[] shown = filter.SchemeId is null ? all : [.. all.Where(scheme => scheme.Id == filter.SchemeId)];
        if (shown.Length == 0 && filter.SchemeId is not null) return null;

        var rows = workforce.At(filter.SiteId).People
            .Select(person => new MatrixRow(person, [.. shown.Select(scheme => CellOf(workforce, person, scheme))]))
            .Where(row => filter.Standing is null || row.Cells.Any(cell => filter.Admits(cell.Standing)));
        return new(workforce, filter, all, shown, [.. rows]);
    }

    /// <summary>The rows of a page.</summary>
    /// <param name="page">1 for the first.</param>
    public IEnumerable<MatrixRow> RowsOf(int page) => Rows.Skip((page - 1) * RowsAPage).Take(RowsAPage);

    private static MatrixCell CellOf(EmployedPeople workforce, EmployedPerson person, NamedScheme scheme) =>
        workforce.FindHeld(person.PersonId, scheme.Id) is { } held
            ? new(Standings.On(held, workforce.Today), Standings.ExpiresOn(held, workforce.Today))
            : new(null, null);
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
public sealed record MatrixPage(Matrix Matrix, int Page);
