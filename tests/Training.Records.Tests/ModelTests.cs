using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Metadata;
using Microsoft.EntityFrameworkCore.Migrations;
using Microsoft.SqlServer.TransactSql.ScriptDom;

namespace Training.Records.Tests;

/// <summary>Keeps the three engines alike where only one of them would complain. Needs no server.</summary>
public sealed class ModelTests
{
    public static TheoryData<DatabaseEngine> Engines => [.. Enum.GetValues<DatabaseEngine>()];

    /// <summary>Texts without a bound: never in an index, never searched.</summary>
    private static readonly string[] Unbounded =
    [
        "CourseChoice.CourseIds", "CourseSnapshotRecord.Content", "SittingResultRecord.Reasons", "ScoresheetResultRecord.Reasons", "DecisionRecord.Reasons",
        "SiteSpecies.SpeciesIds", "Panel.ItemIds", "ClassPlanVersion.Classes", "PaperRunFailure.Arguments", "BitePlan.Hospitals",
        "DrawnQuestionRecord.OptionIds", "AnswerRecord.OptionIds", "StartedSitting.Draw", "StartedAnswer.OptionIds",
    ];

    [Theory, MemberData(nameof(Engines))]
    public void The_migrations_say_what_the_model_says(DatabaseEngine engine)
    {
        using var records = Open(engine);

        Assert.False(records.Database.HasPendingModelChanges());
        Assert.NotEmpty(records.Database.GetMigrations());
    }

    [Theory, MemberData(nameof(Engines))]
    public void Nothing_that_is_pointed_to_can_be_deleted(DatabaseEngine engine)
    {
        using var records = Open(engine);
        var references = Entities(records).SelectMany(entity => entity.GetForeignKeys()).ToList();

        Assert.NotEmpty(references);
        Assert.All(references, reference => Assert.Equal(DeleteBehavior.Restrict, reference.DeleteBehavior));
    }

    [Theory, MemberData(nameof(Engines))]
    public void Every_text_is_bounded_but_stored_lists_and_course_content(DatabaseEngine engine)
    {
        using var records = Open(engine);
        var unbounded = Entities(records).SelectMany(entity => entity.GetProperties())
            .Where(property => StoredType(property) == typeof(string) && property.GetMaxLength() is null)
            .Select(property => $"{property.DeclaringType.ClrType.Name}.{property.Name}");

        Assert.Equal(Unbounded.Order(StringComparer.Ordinal), unbounded.Order(StringComparer.Ordinal));
    }

    [Theory, MemberData(nameof(Engines))]
    public void Every_key_fits_the_smallest_index_of_the_three_engines(DatabaseEngine engine)
    {
        using var records = Open(engine);

        // SQL Server: 900 bytes for a clustered key, 1,700 for any other index; text takes two bytes a character.
        Assert.All(Entities(records), entity => Assert.InRange(Bytes(entity.FindPrimaryKey()!.Properties), 1, 900));
        Assert.All(Entities(records).SelectMany(entity => entity.GetIndexes()), index => Assert.InRange(Bytes(index.Properties), 1, 1700));
    }

    [Theory, MemberData(nameof(Engines))]
    public void No_unique_index_holds_a_column_that_may_be_null(DatabaseEngine engine)
    {
        using var records = Open(engine);
        var unique = Entities(records).SelectMany(entity => entity.GetIndexes()).Where(index => index.IsUnique).ToList();

        Assert.NotEmpty(unique);
        Assert.All(unique, index => Assert.DoesNotContain(index.Properties, property => property.IsNullable));
    }

    [Theory, MemberData(nameof(Engines))]
    public void No_engine_makes_a_key_or_a_version(DatabaseEngine engine)
    {
        using var records = Open(engine);
        var properties = Entities(records).SelectMany(entity => entity.GetProperties()).ToList();

        Assert.All(properties, property => Assert.Equal(ValueGenerated.Never, property.ValueGenerated));
        Assert.All(properties.Where(property => property.IsConcurrencyToken), property => Assert.Equal(typeof(int), property.ClrType));
        Assert.All(
            Entities(records).Where(entity => entity.ClrType.IsAssignableTo(typeof(IVersioned))),
            entity => Assert.True(entity.FindProperty(nameof(IVersioned.Version))!.IsConcurrencyToken));
    }

    [Theory, MemberData(nameof(Engines))]
    public void Enums_are_stored_as_text(DatabaseEngine engine)
    {
        using var records = Open(engine);
        var enums = Entities(records).SelectMany(entity => entity.GetProperties())
            .Where(property => (Nullable.GetUnderlyingType(property.ClrType) ?? property.ClrType).IsEnum).ToList();

        Assert.NotEmpty(enums);
        Assert.All(enums, property => Assert.Equal(typeof(string), StoredType(property)));
        Assert.All(enums, property => Assert.All(Enum.GetNames(Nullable.GetUnderlyingType(property.ClrType) ?? property.ClrType), name => Assert.InRange(name.Length, 1, property.GetMaxLength() ?? 0)));
    }

    [Fact]
    public void The_sql_server_script_is_sound_t_sql()
    {
        using var records = Open(DatabaseEngine.SqlServer);
        var script = records.GetService<IMigrator>().GenerateScript(options: MigrationsSqlGenerationOptions.Idempotent);

        Assert.Contains("CREATE TABLE [Papers]", script, StringComparison.Ordinal);
        Assert.Empty(Parse(script));
        Assert.NotEmpty(Parse(script.Replace("CREATE TABLE [Papers] (", "CREATE TABLE [Papers] ((", StringComparison.Ordinal)));
    }

    private static IList<ParseError> Parse(string script)
    {
        using var reader = new StringReader(script);
        new TSql160Parser(initialQuotedIdentifiers: true).Parse(reader, out var errors);
        return errors;
    }

    private static int Bytes(IEnumerable<IReadOnlyProperty> properties) => properties.Sum(property => StoredType(property) switch
    {
        var type when type == typeof(string) => 2 * (property.GetMaxLength() ?? 100_000),
        var type when type == typeof(Guid) => 16,
        _ => 8,
    });

    private static Type StoredType(IReadOnlyProperty property)
    {
        var type = property.GetTypeMapping().Converter?.ProviderClrType ?? property.ClrType;
        return Nullable.GetUnderlyingType(type) ?? type;
    }

    private static IEnumerable<IEntityType> Entities(RecordsContext records) =>
        records.GetService<IDesignTimeModel>().Model.GetEntityTypes();

    private static RecordsContext Open(DatabaseEngine engine)
    {
        var options = new DbContextOptionsBuilder<RecordsContext>();
        options.UseRecords(new DatabaseOptions
        {
            Engine = engine,
            Connection = engine switch
            {
                DatabaseEngine.Sqlite => "Data Source=:memory:",
                DatabaseEngine.SqlServer => "Server=none;Database=none",
                DatabaseEngine.Postgres => "Host=none;Database=none",
            },
        });
        return new(options.Options);
    }
}
