using System.Globalization;
using Microsoft.Extensions.Configuration;
using Training.Courses;
using Training.Records;
using Training.Web.Problems;
using Training.Web.Settings;

namespace Training.Web.Tests.Settings;

public sealed class SettingsReaderTests
{
    [Fact]
    public void Without_any_setting_the_defaults_hold()
    {
        var options = Read([], out var problems);

        Assert.Empty(problems);
        Assert.Equal(DatabaseEngine.Sqlite, options!.Database.Engine);
        Assert.Equal("var", options.DataFolder);
        Assert.Equal(30, options.Verify.ChecksPerMinute);
    }

    [Fact]
    public void An_environment_variable_overrides_the_file()
    {
        const string Variable = "Training__Database__Engine";
        Environment.SetEnvironmentVariable(Variable, "Postgres");
        try
        {
            var configuration = new ConfigurationBuilder()
                .AddInMemoryCollection([new("Training:Database:Engine", "Sqlite"), new("Training:Database:Connection", "Host=db")])
                .AddEnvironmentVariables()
                .Build();

            Assert.Equal(DatabaseEngine.Postgres, SettingsReader.Read(configuration, [])!.Database.Engine);
        }
        finally
        {
            Environment.SetEnvironmentVariable(Variable, null);
        }
    }

    [Theory]
    [InlineData("Training:Databse:Engine", "Sqlite", SettingsProblems.KeyUnknown, "Training:Databse")]
    [InlineData("Training:Database:Engin", "Sqlite", SettingsProblems.KeyUnknown, "Training:Database:Engin")]
    [InlineData("Training:Database:Engine", "MySql", SettingsProblems.ValueUnknown, "Training:Database:Engine")]
    [InlineData("Training:Database:Engine", "1", SettingsProblems.ValueUnknown, "Training:Database:Engine")]
    [InlineData("Training:Database:Engine", "Sqlite,Postgres", SettingsProblems.ValueUnknown, "Training:Database:Engine")]
    [InlineData("Training:Database:Engine", "", SettingsProblems.Missing, "Training:Database:Engine")]
    [InlineData("Training:Database:Engine", "SqlServer", SettingsProblems.ConnectionMissing, "Training:Database:Connection")]
    [InlineData("Training:DataFolder", " ", SettingsProblems.Missing, "Training:DataFolder")]
    [InlineData("Training:PublicAddress", "training.example.org", SettingsProblems.AddressInvalid, "Training:PublicAddress")]
    [InlineData("Training:PublicAddress", "ftp://training.example.org", SettingsProblems.AddressInvalid, "Training:PublicAddress")]
    [InlineData("Training:PublicAddress", "", SettingsProblems.Missing, "Training:PublicAddress")]
    [InlineData("Training:Papers:Size", "Legal", SettingsProblems.ValueUnknown, "Training:Papers:Size")]
    [InlineData("Training:Provider:TimeZone", "Mars/Olympus", SettingsProblems.TimeZoneUnknown, "Training:Provider:TimeZone")]
    [InlineData("Training:Verify:ChecksPerMinute", "0", SettingsProblems.OutOfRange, "Training:Verify:ChecksPerMinute")]
    [InlineData("Training:Verify:ChecksPerMinute", "10001", SettingsProblems.OutOfRange, "Training:Verify:ChecksPerMinute")]
    [InlineData("Training:Verify:ChecksPerMinute", "many", SettingsProblems.OutOfRange, "Training:Verify:ChecksPerMinute")]
    [InlineData("Training:TrustedProxies", "10.0.0.1, proxy", SettingsProblems.ProxyInvalid, "Training:TrustedProxies")]
    public void What_cannot_be_used_is_one_problem_at_its_place(string key, string value, string code, string place)
    {
        var options = Read([new(key, value)], out var problems);

        Assert.Null(options);
        var problem = Assert.Single(problems);
        Assert.Equal((code, place), (problem.Code, problem.Place.Part));
        Assert.DoesNotContain('\n', ProblemText.Line(problem, CultureInfo.InvariantCulture));
    }

    [Fact]
    public void All_problems_are_told_at_once()
    {
        Read([new("Training:Databse", "x"), new("Training:Papers:Size", "Legal"), new("Training:Verify:ChecksPerMinute", "-1")], out var problems);

        Assert.Equal(3, problems.Count);
    }

    [Fact]
    public void A_name_of_120_characters_fits_and_one_more_does_not()
    {
        Assert.NotNull(Read([new("Training:Provider:Name", new string('n', 120))], out _));
        Read([new("Training:Provider:Name", new string('n', 121))], out var problems);

        Assert.Equal(SettingsProblems.TooLong, Assert.Single(problems).Code);
    }

    [Fact]
    public void Serving_needs_an_address_to_print()
    {
        var problems = new List<Problem>();

        SettingsReader.LookForServing(Read([], out _)!, problems);
        SettingsReader.LookForServing(Read([new("Training:PublicAddress", "https://training.example.org")], out _)!, problems);

        Assert.Equal(SettingsProblems.Missing, Assert.Single(problems).Code);
    }

    [Fact]
    public void Only_the_demo_moves_its_clock()
    {
        var problems = new List<Problem>();
        var options = Read([new("Training:PublicAddress", "https://training.example.org"), new("Training:Demo:DaysAhead", "50")], out _)!;

        SettingsReader.LookForServing(options, problems);

        Assert.Equal(SettingsProblems.DemoOnly, Assert.Single(problems).Code);
    }

    private static TrainingOptions? Read(IEnumerable<KeyValuePair<string, string?>> settings, out List<Problem> problems)
    {
        problems = [];
        return SettingsReader.Read(new ConfigurationBuilder().AddInMemoryCollection(settings).Build(), problems);
    }
}
