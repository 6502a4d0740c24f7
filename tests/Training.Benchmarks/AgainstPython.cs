using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json;
using Training.Courses;
using Training.Documents.Certificates;
using Training.Documents.Typesetting;
using Training.Documents.Fonts;
using Training.Documents.Signatures;

namespace Training.Benchmarks;

/// <summary>Certificates a second on one thread, unsigned and signed, with memory on the way; the same words printed by ReportLab and WeasyPrint.</summary>
/// <remarks>The others print less: the words, a frame and (ReportLab) the code, without tags, drawings and signature.</remarks>
internal static class AgainstPython
{
    private const int Steps = 5;
    private const string FontFolder = "/usr/share/fonts/truetype/lato";

    // What the others print takes longer; a rate needs no more pages.
    private static readonly (string Script, string Package, int Share)[] Others =
        [("certificates_reportlab.py", "python3-reportlab", 10), ("certificates_weasyprint.py", "weasyprint", 200)];

    private static readonly DateTimeOffset SignedAt = new(2026, 11, 25, 18, 0, 0, TimeSpan.Zero);

    private static readonly CertificatePage Page = new()
    {
        Language = Language.Spanish,
        Kind = SchemeKind.Certification,
        Paper = PaperSize.UsLetter,
        IsDemonstration = false,
        ProviderName = "Quillback Field Safety",
        ProviderAddress = "410 Ocotillo Road, Barstow, California 92311",
        WorkerName = "José Ángel Ibáñez-Núñez",
        TraineeNumber = "QFS-004127",
        SchemeTitle = "Manejo de serpientes solo con herramientas",
        SchemeEffectiveFrom = new(2026, 1, 1),
        SchemeRevision = "3f9a1c72",
        ShownText = "Distinguir las serpientes venenosas de la región, guardar la longitud mínima de trabajo, pasar una serpiente con gancho y pinza a una cubeta, primero un modelo y después viva.",
        Place = "Patio Peña, Barstow",
        Hours = 6.5m,
        DecidedBy = "Rosa Delgado Güemes",
        DecidedOn = new(2026, 11, 25),
        EffectiveOn = new(2026, 11, 26),
        CountedFrom = new(2026, 12, 7),
        Validity = new(12, DurationUnit.Months),
        ExpiresOn = new(2027, 12, 7),
        Serial = "4G7K29QXPDABC3DE",
        Revision = "1",
        CheckAddress = "https://training.quillback.example/verify/4G7K29QXPDABC3DE",
        CodeAddress = "https://training.quillback.example/verify/4G7K29QXPDABC3DE",
    };

    public static int Run(int pages)
    {
        if (!File.Exists(Path.Combine(FontFolder, "Lato-Light.ttf"))) return Fail("Lato is needed: apt-get install fonts-lato");
        var problems = new List<Problem>();
        var fonts = FontFaces.Read(Face("Light"), Face("Regular"), Face("Bold"), problems)!; // Lato passes every check of ours.
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        using var certificate = SignerCertificate.Make(key, Page.ProviderName, SignedAt.AddDays(-1), SignedAt.AddYears(10));
        var signer = new PdfSigner(certificate, SignedAt);

        Print($"{pages:N0} certificates on one thread, Lato embedded; ms are processor time, so that a busy machine does not count");
        var unsigned = new Lane("unsigned", () => CertificateWriter.Write(Page, fonts));
        var signed = new Lane("signed  ", () => CertificateWriter.Write(Page, fonts, signer));
        // By turns, so that whatever else the machine does meets both.
        for (var step = 0; step < Steps; step++)
        {
            unsigned.Print(pages / Steps);
            signed.Print(pages / Steps);
        }

        Print($"A signature takes {signed.Milliseconds - unsigned.Milliseconds:F2} ms of {signed.Milliseconds:F2}.");
        return Others.Select(other => Compare(other.Script, other.Package, Math.Max(5, pages / other.Share), unsigned.Milliseconds, signed.Milliseconds)).ToList().Max();
    }

    /// <summary>One way to print, timed over all its turns.</summary>
    private sealed class Lane
    {
        private readonly string _name;
        private readonly Func<byte[]> _write;
        private TimeSpan _wall, _processor;
        private int _pages;

        public Lane(string name, Func<byte[]> write)
        {
            (_name, _write) = (name, write);
            for (var warm = 0; warm < 50; warm++) write();
        }

        public double Milliseconds => _processor.TotalMilliseconds / _pages;

        public void Print(int pages)
        {
            var (clock, processor, size) = (Stopwatch.StartNew(), Environment.CpuUsage.TotalTime, 0);
            for (var page = 0; page < pages; page++) size = _write().Length;
            _wall += clock.Elapsed;
            _processor += Environment.CpuUsage.TotalTime - processor;
            _pages += pages;
            AgainstPython.Print($"{_name} {_pages,9:N0}: {_pages / _wall.TotalSeconds,4:F0} a second, {Milliseconds:F2} ms, {size:N0} bytes each; in use {GC.GetTotalMemory(false) >> 20} MB, process {Environment.WorkingSet >> 20} MB");
        }
    }

    private static int Compare(string script, string package, int pages, double unsigned, double signed)
    {
        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file, JsonSerializer.Serialize(Words()));
            var start = new ProcessStartInfo("/usr/bin/python3", [Path.Combine(AppContext.BaseDirectory, script), file, pages.ToString(CultureInfo.InvariantCulture)])
            {
                RedirectStandardOutput = true,
                UseShellExecute = false,
            };
            using var python = Process.Start(start) ?? throw new InvalidOperationException("Python did not start.");
            var answer = python.StandardOutput.ReadToEnd().Split(' ');
            python.WaitForExit();
            if (python.ExitCode != 0) return Fail($"{script} stopped; it needs {package}.");
            var (rate, milliseconds) = (Number(answer[0]), Number(answer[1]));
            Print($"{script} {pages:N0}: {rate:F1} a second, {milliseconds:F2} ms, {Number(answer[2]):N0} bytes each, {Number(answer[3]):F0} MB at most: {milliseconds / unsigned:F1} times ours unsigned, {milliseconds / signed:F1} times ours signed");
            return 0;
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static object Words() => new
    {
        title = $"{Page.SchemeTitle}, {Page.WorkerName}",
        provider = Page.ProviderName,
        address = Page.CheckAddress,
        fonts = FontFolder,
        lines = new object[][]
        {
            ["Bold", 13, Page.ProviderName], ["Regular", 9, Page.ProviderAddress], ["Light", 30, "Certificación"], ["Light", 26, Page.WorkerName],
            ["Regular", 9, Page.TraineeNumber], ["Bold", 15, Page.SchemeTitle], ["Regular", 11, Page.ShownText], ["Regular", 11, $"Lugar: {Page.Place}. Horas: 6.5."],
            ["Regular", 11, $"Decidido por {Page.DecidedBy} el 25 de noviembre de 2026."], ["Bold", 13, "Vigente del 26 de noviembre de 2026 al 7 de diciembre de 2027, ese día incluido."],
            ["Regular", 9, $"Reglas del 1 de enero de 2026, revisión {Page.SchemeRevision}."], ["Bold", 11, $"Serie {Page.Serial}, revisión {Page.Revision}"], ["Regular", 9, Page.CheckAddress],
        },
    };

    private static byte[] Face(string name) => File.ReadAllBytes(Path.Combine(FontFolder, $"Lato-{name}.ttf"));

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static void Print(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));

    private static int Fail(string line)
    {
        Console.Error.WriteLine(line);
        return 2;
    }
}
