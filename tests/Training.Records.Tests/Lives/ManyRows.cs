using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Microsoft.EntityFrameworkCore.Storage;

namespace Training.Records.Tests;

/// <summary>Writes hundreds of thousands of rows in seconds: one prepared command a table, columns and conversions as the model has them.</summary>
internal static class ManyRows
{
    public static async Task InsertAsync<T>(this RecordsContext records, IEnumerable<T> rows, CancellationToken cancellation)
        where T : class
    {
        var table = records.Model.FindEntityType(typeof(T))!; // not null: every type that is written has a table
        var columns = table.GetProperties().ToArray();
        await using var command = records.Database.GetDbConnection().CreateCommand();
        command.Transaction = records.Database.CurrentTransaction?.GetDbTransaction();
        var names = records.GetService();
        command.CommandText = $"INSERT INTO {names.DelimitIdentifier(table.GetTableName()!)} "
            + $"({string.Join(", ", columns.Select(column => names.DelimitIdentifier(column.GetColumnName())))}) "
            + $"VALUES ({string.Join(", ", columns.Select((_, index) => $"@p{index}"))})";
        foreach (var row in rows)
        {
            for (var i = 0; i < columns.Length; i++) Set(command, i, columns[i], row);
            await command.ExecuteNonQueryAsync(cancellation);
        }
    }

    private static void Set(DbCommand command, int index, IProperty column, object row)
    {
        var value = column.GetGetter().GetClrValue(row);
        if (command.Parameters.Count == index)
        {
            command.Parameters.Add(column.GetRelationalTypeMapping().CreateParameter(command, $"@p{index}", value, nullable: true));
            return;
        }

        var converter = column.GetRelationalTypeMapping().Converter;
        command.Parameters[index].Value = (converter is null ? value : converter.ConvertToProvider(value)) ?? DBNull.Value;
    }

    private static ISqlGenerationHelper GetService(this RecordsContext records) =>
        Microsoft.EntityFrameworkCore.Infrastructure.AccessorExtensions.GetService<ISqlGenerationHelper>(records);
}
