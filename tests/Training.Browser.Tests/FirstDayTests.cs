using System.Text;
using Microsoft.Playwright;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Tests.House;

namespace Training.Browser.Tests;

/// <summary>A new provider's first day, in Spanish on a phone, from an empty database to the first certificate; nothing but what is on the screen.</summary>
public sealed class FirstDayTests(Chromium chromium)
{
    private const string Password = "grava tortuga paraguas";

    [Fact]
    public async Task From_an_empty_database_to_the_first_certificate()
    {
        using var site = RunningSite.StartEmpty(settings: [new("Training:Provider:Name", "Training provider"), new("Training:Provider:Address", "")]);
        var page = await chromium.OpenAsync(site, 390);

        await BecomeLeadAsync(site, page);
        await ConfirmAddressAsync(page);
        await SayWhoWeAreAsync(page);
        await AddEmployerAsync(page);
        await ChooseCoursesAsync(page);
        await SendRosterAsync(page);
        await PlanClassAsync(site, page);
        await EarnCertificateAsync(site, page);

        await page.GotoAsync("/es/programme/first-day");
        await PictureAsync(page, "over");
        Assert.Equal("Su primer día terminó: el programa funciona.", await SaysAsync(page));
        await page.GetByRole(AriaRole.Link, new() { Name = "A lo que espera" }).ClickAsync();
        Assert.DoesNotContain("Primer día:", await page.InnerTextAsync("main"), StringComparison.Ordinal);
    }

    private static async Task BecomeLeadAsync(RunningSite site, IPage page)
    {
        var code = OneTimeCode.Draw();
        await site.RecordAsync(records => records.KeepAsync(
            new FirstLeadCode { Id = Guid.CreateVersion7(), CodeHash = OneTimeCode.HashOf(code), MadeAt = RunningSite.Now, EndsAt = RunningSite.Now.AddDays(7) },
            CancellationToken.None));
        await page.GotoAsync("/es");
        await PictureAsync(page, "new");
        await page.GetByRole(AriaRole.Link, new() { Name = "Comenzar el primer día" }).ClickAsync();
        await page.GetByLabel("Código de un solo uso").FillAsync(code.ToLowerInvariant());
        await page.GetByLabel("Su nombre completo").FillAsync("Ximena Albarrán");
        await page.GetByLabel("Nombre de acceso").FillAsync("ximena");
        await page.GetByLabel("Contraseña nueva", new() { Exact = true }).FillAsync(Password);
        await page.GetByLabel("Contraseña nueva otra vez").FillAsync(Password);
        await PictureAsync(page, "lead");
        await DoAsync(page, "Comenzar");

        Assert.Equal("Su programa empieza aquí: 7 pasos hasta el primer certificado.", await SaysAsync(page));
        await PictureAsync(page, "steps");
    }

    private static async Task ConfirmAddressAsync(IPage page)
    {
        await GoOnAsync(page, "Confirmar la dirección pública");
        await PictureAsync(page, "address");
        await DoAsync(page, "Esta dirección es la correcta");
        await BackAsync(page, done: 1);
    }

    private static async Task SayWhoWeAreAsync(IPage page)
    {
        await GoOnAsync(page, "Decir quién es usted");
        Assert.Equal("", await page.GetByLabel("Nombre de quien capacita y certifica").InputValueAsync());
        await page.GetByLabel("Nombre de quien capacita y certifica").FillAsync("Cañada Honda Seguridad");
        await page.GetByLabel("Dirección postal").FillAsync("12 Spillway Road, Cañon Alto");
        await page.GetByLabel("Zona horaria").SelectOptionAsync(new SelectOptionValue { Label = "Arizona, sin cambio de hora (Phoenix)" });
        await page.GetByLabel("Estado").SelectOptionAsync(new SelectOptionValue { Label = "Arizona" });
        await PictureAsync(page, "provider");
        await DoAsync(page, "Guardar esto");
        Assert.Equal("Cañada Honda Seguridad capacita y certifica aquí.", await SaysAsync(page));
        await BackAsync(page, done: 2);
    }

    private static async Task AddEmployerAsync(IPage page)
    {
        await GoOnAsync(page, "Una primera empresa, su sitio y a quién llamar desde allí");
        await page.GetByLabel("Nombre de la empresa").FillAsync("Ocotillo Bench Solar");
        await DoAsync(page, "Agregar esta empresa");
        await page.GetByLabel("Nombre del sitio").FillAsync("Bench North Array");
        await PictureAsync(page, "site");
        // Zone and state come from the provider's.
        await DoAsync(page, "Agregar este sitio");
        Assert.Equal("911", await page.GetByLabel("Servicios de emergencia").InputValueAsync());
        await page.GetByLabel("En el sitio, de inmediato").FillAsync("Jefe de turno, canal de radio 2");
        await page.GetByLabel("Donde no hay señal").FillAsync("Canal de radio 2: el control llama a emergencias");
        await PictureAsync(page, "numbers");
        await DoAsync(page, "Revisado hoy: guardar esto");
        Assert.StartsWith("Bench North Array: a quién llamar se revisó el ", await SaysAsync(page), StringComparison.Ordinal);
        await BackAsync(page, done: 3);
    }

    private static async Task ChooseCoursesAsync(IPage page)
    {
        await GoOnAsync(page, "Elegir los cursos y leer sus preguntas");
        foreach (var box in await page.Locator("[name=CourseIds]").AllAsync())
        {
            if (await box.GetAttributeAsync("value") != "awareness") await box.UncheckAsync();
        }

        await PictureAsync(page, "courses");
        await DoAsync(page, "Usar estos cursos");
        // Left half done and taken up again.
        await page.GetByRole(AriaRole.Link, new() { Name = "Volver al primer día" }).ClickAsync();
        await GoOnAsync(page, "Elegir los cursos y leer sus preguntas");
        await PictureAsync(page, "questions");
        await page.Locator("main a.do").ClickAsync();
        await PictureAsync(page, "review");
        for (var modules = 0; modules < 20 && await page.Locator("[value=all]").CountAsync() > 0; modules++) await page.Locator("[value=all]").ClickAsync();
        Assert.Contains("todas las preguntas están leídas", await SaysAsync(page), StringComparison.Ordinal);
        await BackAsync(page, done: 4);
    }

    private static async Task SendRosterAsync(IPage page)
    {
        await GoOnAsync(page, "Traer una cuadrilla");
        var roster = "gafete;nombre;sitio;idioma\r\nB-1;Íñigo Peña Ruiz;Bench North Array;español\r\nB-2;Solveig Amaro;Bench North Array;inglés\r\n";
        await page.Locator("#File").SetInputFilesAsync(new FilePayload { Name = "lista.csv", MimeType = "text/csv", Buffer = Encoding.Latin1.GetBytes(roster) });
        await PictureAsync(page, "roster");
        await page.Locator("main form button.do").ClickAsync();
        await PictureAsync(page, "difference");
        await page.Locator("main form button.do").ClickAsync();
        await PictureAsync(page, "applied");
        await BackAsync(page, done: 5);
    }

    private async Task PlanClassAsync(RunningSite site, IPage page)
    {
        await GoOnAsync(page, "Planear un día de clase");
        await page.Locator("#HeldOn").FillAsync("2026-12-03");
        await PictureAsync(page, "class");
        await page.Locator("main form button.do").ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Volver al primer día" }).ClickAsync();
        // Nobody is appointed yet: the step leads to people first.
        await GoOnAsync(page, "Planear un día de clase");
        await page.GetByLabel("Nombre completo").FillAsync("Wanda Trujillo");
        await PictureAsync(page, "own");
        await page.GetByRole(AriaRole.Button, new() { Name = "Agregar como gente nuestra" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Ver y dar funciones" }).ClickAsync();
        await page.GetByLabel("Función", new() { Exact = true }).SelectOptionAsync(new SelectOptionValue { Value = "Instructor" });
        await PictureAsync(page, "role");
        await DoAsync(page, "Dar esta función");
        await page.GetByRole(AriaRole.Link, new() { Name = "Volver al primer día" }).ClickAsync();
        await GoOnAsync(page, "Planear un día de clase");
        await PictureAsync(page, "teacher");
        await page.Locator("form[action$='/teachers'] button").ClickAsync();
        // Nobody is put to a class without a file: the page says so, and what to do.
        await PictureAsync(page, "no-file");
        Assert.Equal(1, await page.Locator(".mend").CountAsync());
        await WriteFileAsync(site, page);
        await page.GotoAsync("/es/programme/first-day");
        await GoOnAsync(page, "Planear un día de clase");
        await page.Locator("form[action$='/teachers'] button").ClickAsync();
        await BackAsync(page, done: 6);
    }

    private async Task WriteFileAsync(RunningSite site, IPage page)
    {
        await page.GetByRole(AriaRole.Link, new() { Name = "Instructores", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Wanda Trujillo" }).ClickAsync();
        foreach (var course in await page.Locator("#CourseId option").EvaluateAllAsync<string[]>("options => options.map(option => option.value)"))
        {
            await page.Locator("#CourseId").SelectOptionAsync(course);
            await page.CheckAsync("[value=Teach-Model]");
            await page.Locator("#Evidence").FillAsync("Dio dos clases acompañada por una responsable.");
            await page.Locator("#StartsOn").FillAsync("2026-11-01");
            await page.Locator("#EndsOn").FillAsync("2027-10-31");
            await page.Locator("form[action$='/competences'] button").ClickAsync();
        }

        await PictureAsync(page, "file");
        await page.GetByRole(AriaRole.Link, new() { Name = "Wanda Trujillo" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Crear un código de un solo uso" }).ClickAsync();
        await page.Locator("main form button.do").ClickAsync();
        var code = await page.Locator("td.serial").First.InnerTextAsync();

        var instructor = await chromium.OpenAsync(site, 390);
        await instructor.GotoAsync("/es/first-sign-in");
        await instructor.Locator("#Name").FillAsync("wanda.trujillo");
        await instructor.Locator("#Code").FillAsync(code);
        await instructor.Locator("#NewPassword").FillAsync(Password);
        await instructor.Locator("#Again").FillAsync(Password);
        await instructor.Locator("main form button.do").ClickAsync();
        await instructor.GetByRole(AriaRole.Link, new() { Name = "Mi expediente" }).ClickAsync();
        await DoAsync(instructor, "Lo declaro hoy");
        await PictureAsync(instructor, "statement");
    }

    private async Task EarnCertificateAsync(RunningSite site, IPage page)
    {
        await GoOnAsync(page, "Un primer certificado");
        await PictureAsync(page, "people");
        await page.GetByRole(AriaRole.Link, new() { Name = "Íñigo Peña Ruiz" }).ClickAsync();
        await PictureAsync(page, "person");
        await page.GetByRole(AriaRole.Link, new() { Name = "Crear un código de un solo uso" }).ClickAsync();
        Assert.Equal("inigo.ruiz", await page.Locator("#SignInName").InputValueAsync());
        await page.Locator("main form button.do").ClickAsync();
        await PictureAsync(page, "code");
        var code = await page.Locator("td.serial").First.InnerTextAsync();

        var worker = await chromium.OpenAsync(site, 390);
        await worker.GotoAsync("/es/first-sign-in");
        await worker.Locator("#Name").FillAsync("inigo.ruiz");
        await worker.Locator("#Code").FillAsync(code);
        await worker.Locator("#NewPassword").FillAsync(Password);
        await worker.Locator("#Again").FillAsync(Password);
        await worker.Locator("main form button.do").ClickAsync();
        await PictureAsync(worker, "worker");
        Assert.Contains("Jefe de turno, canal de radio 2", await worker.InnerTextAsync("main"), StringComparison.Ordinal);
        await PassQuizAsync(site, worker);
        await PictureAsync(worker, "passed");
        await worker.GotoAsync("/es/my");
        await PictureAsync(worker, "certified");
        Assert.Equal(1, await worker.Locator("#certificates + ul li").CountAsync());
    }

    /// <summary>Answers every question with its key and sends the quiz.</summary>
    private static async Task PassQuizAsync(RunningSite site, IPage page)
    {
        var course = site.Shelf.Find("awareness")!; // not null: the shipped course
        await page.GotoAsync("/es/my/courses/awareness/quiz");
        await DoAsync(page, "Empezar el examen");
        var sittingId = Guid.Parse(new Uri(page.Url).Segments[4].Trim('/'));
        KeptSitting? sitting = null;
        await site.RecordAsync(async records => sitting = (await records.FindStartedSittingAsync(
            records.StartedSittings.Single(row => row.Id == sittingId).PersonId, sittingId, CancellationToken.None)));
        foreach (var drawn in sitting!.Draw.Questions) // not null: it was just started
        {
            switch (course.Questions.Single(question => question.Id == drawn.QuestionId).Key)
            {
                case QuestionKey.One one:
                    await page.CheckAsync($"[value='{one.OptionId}']");
                    break;
                case QuestionKey.Several several:
                    foreach (var option in several.OptionIds) await page.CheckAsync($"[value='{option}']");
                    break;
                case QuestionKey.Order order:
                    foreach (var (index, option) in order.OptionIds.Index()) await page.Locator($"[name='place[{option}]']").SelectOptionAsync($"{index + 1}");
                    break;
                case QuestionKey.Match match:
                    foreach (var pair in match.Pairs) await page.Locator($"[name='match[{pair.OptionId}]']").SelectOptionAsync(pair.MatchId);
                    break;
                case QuestionKey.Spot spot:
                    await page.CheckAsync($"[value='{spot.RegionId}']");
                    break;
                case QuestionKey.Number number:
                    await page.Locator("[name=typed]").FillAsync(number.Value.ToString(System.Globalization.CultureInfo.InvariantCulture));
                    break;
            }

            await page.Locator("main form button.do").ClickAsync();
        }

        await page.Locator("main form button.do").ClickAsync();
    }

    private static async Task GoOnAsync(IPage page, string step) =>
        await page.GetByRole(AriaRole.Link, new() { Name = $"Seguir: {step}" }).ClickAsync();

    private static async Task BackAsync(IPage page, int done)
    {
        await page.GetByRole(AriaRole.Link, new() { Name = "Volver al primer día" }).ClickAsync();
        Assert.Equal($"{done} de 7 pasos están hechos.", await SaysAsync(page));
    }

    private static async Task DoAsync(IPage page, string name) => await page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true }).ClickAsync();

    private static async Task<string> SaysAsync(IPage page)
    {
        // Nothing may be wider than the phone on any page of the way.
        Assert.Equal((page.Url, 390), (page.Url, await page.EvaluateAsync<int>("document.documentElement.scrollWidth")));
        return await page.GetByRole(AriaRole.Heading, new() { Level = 1 }).InnerTextAsync();
    }

    private static async Task PictureAsync(IPage page, string name)
    {
        if (Environment.GetEnvironmentVariable("TEST_PICTURES") is { Length: > 0 } folder)
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"first-day-{name}.png"), FullPage = true });
    }
}
