namespace Training.Web.Features.Shared;

/// <summary>A table for people's spreadsheets: the same rows whatever the file.</summary>
/// <param name="Name">Of the sheet: at most 31 characters, none of <c>[]:*?/\</c>.</param>
/// <param name="Heads">One a column, each another.</param>
/// <param name="Rows">A cell a column: text, a <see cref="DateOnly"/>, an <see cref="int"/>, or null for an empty one. Read while the file is written.</param>
public sealed record SheetTable(string Name, IReadOnlyList<string> Heads, IAsyncEnumerable<IReadOnlyList<object?>> Rows);
