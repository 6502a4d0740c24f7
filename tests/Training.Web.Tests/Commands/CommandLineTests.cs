using System.Diagnostics;
using Training.Web.Commands;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Commands;

public sealed class CommandLineTests
{
    [Fact]
    public async Task An_unknown_verb_is_one_line_and_exit_code_2()
    {
        var (code, _, errors) = await RunAsync("dance");

        Assert.Equal(2, code);
        Assert.Equal("There is no verb \"dance\". Use serve (run the server), demo (run it on an invented programme), check (look through all courses), keys (list, rotate and distrust what is signed with), log (verify the log of what was issued) or translated (note that a translation says the same as its original).", Assert.Single(errors));
    }

    [Fact]
    public async Task A_value_that_is_not_known_stops_the_start_with_one_line()
    {
        var (code, _, errors) = await RunAsync("serve", "--Training:PublicAddress=https://training.example.org", "--Training:Database:Engine=MySql");

        Assert.Equal(1, code);
        Assert.Equal(
            "Training:Database:Engine: “MySql” is not a value of this setting. Use one of: Sqlite, SqlServer, Postgres.",
            Assert.Single(errors));
    }

    [Fact]
    public async Task Serving_without_an_address_to_print_stops_with_one_line()
    {
        var (code, _, errors) = await RunAsync("serve");

        Assert.Equal(1, code);
        Assert.StartsWith("Training:PublicAddress: This setting is required", Assert.Single(errors), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_database_that_does_not_answer_stops_with_one_line()
    {
        var (code, _, errors) = await RunAsync(
            "serve", "--Training:PublicAddress=https://training.example.org", "--Training:Database:Engine=Postgres",
            "--Training:Database:Connection=Host=127.0.0.1;Port=1;Timeout=2");

        Assert.Equal(1, code);
        Assert.StartsWith("Training:Database: The database (Postgres) cannot be opened; it said “", Assert.Single(errors), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_address_that_is_taken_stops_with_one_line()
    {
        using var taken = new System.Net.Sockets.TcpListener(System.Net.IPAddress.Loopback, 0);
        taken.Start();

        var (code, _, errors) = await RunAsync(
            "serve", "--Training:PublicAddress=https://training.example.org", $"--Training:CoursesFolder={Repository.Path("courses")}",
            $"--Urls=http://{taken.LocalEndpoint}", "--Logging:LogLevel:Default=None");

        Assert.Equal(1, code);
        Assert.StartsWith("Urls: The server cannot listen there;", Assert.Single(errors), StringComparison.Ordinal);
    }

    [Fact]
    public void Courses_without_a_finding_are_counted()
    {
        var output = new StringWriter();

        Assert.Equal(0, CheckCommand.Run([$"--Training:CoursesFolder={Repository.Path("courses")}"], output));
        Assert.Matches(@"^4 courses, \d+ modules, \d+ questions, 3 checklists: nothing to mend\.\s*$", output.ToString());
    }

    [Fact]
    public void Findings_stand_one_a_line_with_file_and_line()
    {
        var folder = Directory.CreateTempSubdirectory("training-check-").FullName;
        Directory.CreateDirectory(Path.Combine(folder, "bare"));
        File.WriteAllText(Path.Combine(folder, "bare/course.yaml"), "scheme:\n  kind: certification\n  colour: red\n");
        var output = new StringWriter();

        var code = CheckCommand.Run([$"--Training:CoursesFolder={folder}"], output);

        Directory.Delete(folder, recursive: true);
        Assert.Equal(1, code);
        Assert.Contains("bare/course.yaml:3: ", output.ToString(), StringComparison.Ordinal);
        Assert.Contains("There is no field “colour” here.", output.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_courses_folder_that_is_not_there_is_said_so()
    {
        var output = new StringWriter();

        Assert.Equal(1, CheckCommand.Run(["--Training:CoursesFolder=/nowhere/at/all"], output));
        Assert.Equal(
            "Training:CoursesFolder: There is no folder /nowhere/at/all. Start the program where the folder is, or name the folder here.",
            output.ToString().Trim());
    }

    private static async Task<(int Code, string[] Output, string[] Errors)> RunAsync(params string[] args)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Directory.CreateTempSubdirectory("training-run-").FullName,
        };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "Training.Web.dll"));
        foreach (var argument in args) start.ArgumentList.Add(argument);
        using var process = Process.Start(start)!;
        var (output, errors) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        await process.WaitForExitAsync(new CancellationTokenSource(TimeSpan.FromSeconds(60)).Token);
        Directory.Delete(start.WorkingDirectory, recursive: true);
        return (process.ExitCode, Lines(await output), Lines(await errors));
    }

    private static string[] Lines(string text) => text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}
