using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;
using CsvHelper;
using Training.Courses;
using Training.Records;
using Training.Web.Tests.House;
using static Training.Web.Tests.Features.Workforce.OwnPeople;

namespace Training.Web.Tests.Features.Workforce;

public sealed class MatrixTests(SharedSite shared)
{
    /// <summary>Names that break careless pages and files.</summary>
    private static readonly string[] Names =
    [
        "Niamh O’Dowd-D'Angelo", "María José Peñuelas de la Torre", "Ana \"La Jefa\" Ruiz, Sr.", "عمر بن الخطيب", "Rey 🐍 Salazar",
        "=1+1", "@SUM(A1)", "+1 555", "-2", new('x', 200), "<b>Bold</b> & Sons", "Line\tTab",
    ];

    private RunningSite Site => shared.Site;

    [Fact]
    public async Task Each_row_says_how_somebody_stands_and_through_when()
    {
        var (employer, site) = await Site.EmployerAsync();
        var worker = await Site.HandlerAsync(employer, site, "Ileana Prado-Whitt", "2026-12-07");
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));

        var english = await browser.GetAsync($"/en/employers/{employer}/matrix");
        var spanish = await browser.GetAsync($"/es/employers/{employer}/matrix");

        Assert.Equal("How your 1 people stand today.", english.Says());
        Assert.Contains("On 25 November 2026. People 1 to 1 of 1, by name.", english.Text(), StringComparison.Ordinal);
        Assert.Contains("Ileana Prado-Whitt not held not held renewal due through 7 December 2026 not held", english.Text(), StringComparison.Ordinal);
        Assert.Contains("Ileana Prado-Whitt no lo tiene no lo tiene por renovar hasta el 7 de diciembre de 2026 no lo tiene", spanish.Text(), StringComparison.Ordinal);
        Assert.Contains($"/en/employers/{employer}/people/{worker}", english.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Site_scheme_and_standing_narrow_it_and_the_file_alike()
    {
        var (employer, east) = await Site.EmployerAsync();
        var west = Guid.CreateVersion7();
        await Site.AddAsync(new Records.Site { Id = west, EmployerId = employer, Name = "Rim Line West", Zone = "America/Chicago", Region = "US" });
        await Site.HandlerAsync(employer, east, "East Due", "2026-12-07");
        await Site.HandlerAsync(employer, west, "West Due", "2026-12-07");
        await Site.HandlerAsync(employer, west, "West Current", "2027-09-09");
        await Site.WorkerAsync(employer, west, "West Nothing");
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));
        foreach (var (query, expected) in new (string, string[])[]
        {
            ("", ["East Due", "West Current", "West Due", "West Nothing"]),
            ($"?site={west}", ["West Current", "West Due", "West Nothing"]),
            ("?standing=RenewalDue", ["East Due", "West Due"]),
            ($"?site={west}&scheme=handler&standing=RenewalDue", ["West Due"]),
            ("?scheme=awareness&standing=Current", []),
            ("?scheme=handler&standing=NotHeld", ["West Nothing"]),
        })
        {
            var page = await browser.GetAsync($"/en/employers/{employer}/matrix{query}");
            var rows = Read(await browser.GetAsync($"/en/employers/{employer}/matrix.csv{query}"));

            Assert.Equal(expected, rows.Skip(1).Select(row => row[0]));
            Assert.Equal(expected, new[] { "East Due", "West Current", "West Due", "West Nothing" }.Where(name => page.Html.Contains($">{name}<", StringComparison.Ordinal)));
        }
    }

    [Fact]
    public async Task Names_of_every_kind_stand_on_the_page_as_they_are()
    {
        var (employer, site) = await Site.EmployerAsync();
        foreach (var name in Names) await Site.HandlerAsync(employer, site, name, "2026-12-07");
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));

        foreach (var path in new[] { "", "/matrix" })
        {
            var answer = await browser.GetAsync($"/en/employers/{employer}{path}");

            Assert.All(Names, name => Assert.Contains($"<bdi>{name}</bdi>", answer.Html, StringComparison.Ordinal));
            Assert.DoesNotContain("<b>Bold", Encoding.UTF8.GetString(answer.Bytes), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task The_file_reads_back_in_another_program_cell_by_cell_and_computes_nothing()
    {
        var (employer, site) = await Site.EmployerAsync();
        foreach (var name in Names) await Site.HandlerAsync(employer, site, name, "2026-12-07");
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));

        var answer = await browser.GetAsync($"/es/employers/{employer}/matrix.csv");
        var rows = Read(answer);

        Assert.Equal("text/csv; charset=utf-8", answer.Headers["Content-Type"]);
        Assert.StartsWith("attachment; filename=training-matrix-2026-11-25.csv", answer.Headers["Content-Disposition"], StringComparison.Ordinal);
        Assert.Equal([0xEF, 0xBB, 0xBF], answer.Bytes[..3]);
        Assert.Equal(["Nombre", "Gafete", "Sitio", "Cuadrilla"], rows[0][..4]);
        var handler = Array.IndexOf(rows[0], "Manejo de serpientes solo con herramientas: último día");
        Assert.Equal(Names.Order(StringComparer.Ordinal), rows.Skip(1).Select(row => Unescaped(row[0])).Order(StringComparer.Ordinal));
        Assert.All(rows.Skip(1), row => Assert.Equal(("por renovar", "2026-12-07"), (row[handler - 1], row[handler])));
        Assert.All(rows.SelectMany(row => row), cell => Assert.DoesNotMatch("^[=+@\t-]", cell));
        Assert.Equal(JsonSerializer.Serialize(rows), JsonSerializer.Serialize(await ReadWithPythonAsync(answer.Bytes)));
    }

    [Fact]
    public async Task Two_thousand_workers_are_fifty_a_page_in_less_than_a_second()
    {
        const int People = 2000;
        var (employer, site) = await Site.EmployerAsync();
        await Site.AddAsync([.. Enumerable.Range(1, People).SelectMany(number => Worker(employer, site, number))]);
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));
        var home = $"/en/employers/{employer}";

        var first = await browser.GetAsync($"{home}/matrix");
        var middle = await browser.GetAsync($"{home}/matrix?page=21");
        var beyond = await browser.GetAsync($"{home}/matrix?page=99999");
        var rows = Read(await browser.GetAsync($"{home}/matrix.csv"));
        await browser.GetAsync(home);

        Assert.Equal("How your 2,000 people stand today.", first.Says());
        Assert.Contains("People 1 to 50 of 2,000", first.Text(), StringComparison.Ordinal);
        Assert.Contains("People 1,001 to 1,050 of 2,000", middle.Text(), StringComparison.Ordinal);
        Assert.Contains("Worker 1001", middle.Text(), StringComparison.Ordinal);
        Assert.Contains("People 1,951 to 2,000 of 2,000", beyond.Text(), StringComparison.Ordinal);
        Assert.Contains("matrix?page=22", middle.Html, StringComparison.Ordinal);
        Assert.Equal(People + 1, rows.Count);
        Assert.Equal(People, rows.Skip(1).Select(row => row[1]).Distinct().Count());
        foreach (var path in new[] { "/matrix", "/matrix?page=21&standing=RenewalDue", "" })
        {
            var fastest = TimeSpan.MaxValue;
            for (var time = 0; time < 3; time++)
            {
                var started = Stopwatch.GetTimestamp();
                await browser.GetAsync(home + path);
                fastest = Min(fastest, Stopwatch.GetElapsedTime(started));
            }

            TestContext.Current.TestOutputHelper?.WriteLine($"{path}: {fastest.TotalMilliseconds:F0} ms");
            Assert.InRange(fastest, TimeSpan.Zero, TimeSpan.FromSeconds(1));
        }
    }

    private static TimeSpan Min(TimeSpan one, TimeSpan other) => one < other ? one : other;

    private IEnumerable<object> Worker(Guid employer, Guid site, int number)
    {
        var id = Guid.CreateVersion7();
        DateOnly since = new(2020, 1, 1);
        return
        [
            new Person { Id = id, Language = Language.English },
            new PersonName { Id = Guid.CreateVersion7(), PersonId = id, Text = $"Worker {number:D4}", StartsOn = since },
            new Employment { Id = Guid.CreateVersion7(), PersonId = id, EmployerId = employer, StartsOn = since },
            new Badge { Id = Guid.CreateVersion7(), PersonId = id, EmployerId = employer, StartsOn = since, Number = $"W-{number}" },
            new SiteAssignment { Id = Guid.CreateVersion7(), PersonId = id, SiteId = site, StartsOn = since },
            .. OwnPeople.Held(Site, id, "awareness", Day("2025-11-03"), Day("2027-11-03")),
            .. OwnPeople.Held(Site, id, "handler", Day("2025-11-03"), Day("2026-12-07").AddDays(number % 200)),
        ];
    }

    private static List<string[]> Read(Reply file)
    {
        using var csv = new CsvReader(new StreamReader(new MemoryStream(file.Bytes)), CultureInfo.InvariantCulture);
        var rows = new List<string[]>();
        while (csv.Read()) rows.Add(csv.Parser.Record!);
        return rows;
    }

    private static string Unescaped(string cell) => cell.StartsWith('\'') ? cell[1..] : cell;

    /// <summary>Python's own csv module, on a machine that has it.</summary>
    private static async Task<List<string[]>?> ReadWithPythonAsync(byte[] bytes)
    {
        var path = Path.GetTempFileName();
        await File.WriteAllBytesAsync(path, bytes);
        const string Script = "import csv,json,sys; print(json.dumps(list(csv.reader(open(sys.argv[1], encoding='utf-8-sig', newline='')))))";
        using var python = Process.Start(new ProcessStartInfo("python3", ["-c", Script, path]) { RedirectStandardOutput = true, UseShellExecute = false })!;
        var output = await python.StandardOutput.ReadToEndAsync();
        await python.WaitForExitAsync();
        File.Delete(path);
        return JsonSerializer.Deserialize<List<string[]>>(output);
    }
}
