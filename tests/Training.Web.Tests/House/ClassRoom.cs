using System.Text.RegularExpressions;
using Training.Courses;
using Training.Records;
using Training.Scoring;

namespace Training.Web.Tests.House;

/// <summary>A class day of today with one scorer and one candidate, and what the scorer does there.</summary>
internal sealed partial class ClassRoom
{
    public static readonly DateOnly Today = new(2026, 11, 25);

    /// <summary>A hook of the register that was inspected and is not due for years.</summary>
    public static readonly Guid HookId = Guid.Parse("01990000-0000-7000-8000-0000000000a1");

    public static readonly Guid HookInspectionId = Guid.Parse("01990000-0000-7000-8000-0000000000a2");

    private ClassRoom(RunningSite site) => Site = site;

    public RunningSite Site { get; }

    public Guid ClassId { get; private init; } = Guid.CreateVersion7();

    public Guid InstructorId { get; private init; }

    public Guid CandidateId { get; private init; }

    public Checklist Checklist => Site.Shelf.Find("handler")!.Checklists[0];

    public string StartPath => $"/en/class-days/{ClassId}/candidates/{CandidateId}/scoresheets";

    public static async Task<ClassRoom> OpenAsync(
        RunningSite site, string candidate = "Ileana Prado-Whitt", DateOnly? heldOn = null, Guid? instructorId = null)
    {
        var (_, siteId) = await site.EmployerAsync();
        var room = new ClassRoom(site)
        {
            InstructorId = instructorId ?? await site.AppointedAsync(AppointedRole.Instructor, "Winifred Oakley"),
            CandidateId = await site.PersonAsync(candidate),
        };
        await site.AddAsync(
            new ClassRecord { Id = room.ClassId, SiteId = siteId, HeldOn = heldOn ?? Today, CourseId = "handler", Capacity = 8 },
            new ClassScorer { ClassId = room.ClassId, InstructorId = room.InstructorId },
            new ClassAttendance { ClassId = room.ClassId, PersonId = room.CandidateId });
        await site.RecordAsync(async records =>
        {
            // Every room brings the same hook: kept once, found there by the others.
            if (await records.FindKitAsync(HookId, CancellationToken.None) is { Inspections.Count: > 0 }) return;
            await records.KeepAsync(Piece(HookId, "H-2", room.InstructorId), CancellationToken.None);
            await records.KeepAsync(Inspection(HookInspectionId, HookId, room.InstructorId), CancellationToken.None);
        });
        return room;
    }

    /// <summary>A class day that is there already, seen by one of its scorers and one who has a seat.</summary>
    public static ClassRoom At(RunningSite site, Guid classId, Guid instructorId, Guid candidateId) =>
        new(site) { ClassId = classId, InstructorId = instructorId, CandidateId = candidateId };

    public static KitPiece Piece(Guid id, string label, Guid personId) => new()
    {
        Id = id, Label = label, Kind = KitKind.Hook, RegisteredById = personId, RegisteredAt = RunningSite.Now.AddYears(-3),
    };

    public static KitInspectionRecord Inspection(Guid id, Guid pieceId, Guid personId, DateOnly? dueOn = null, string? unfit = null) => new()
    {
        Id = id, PieceId = pieceId, InspectorId = personId, InspectedOn = new(2023, 12, 1), IsFit = unfit is null, Reason = unfit,
        NextDueOn = unfit is null ? dueOn ?? new(2036, 12, 1) : null, KeptAt = RunningSite.Now.AddYears(-3),
    };

    /// <summary>What the start form posts on the model when everything is in order.</summary>
    public static Dictionary<string, string> Form(Guid? id = null) => new(StringComparer.Ordinal)
    {
        ["Id"] = (id ?? Guid.CreateVersion7()).ToString(), ["Subject"] = "model", ["Language"] = "en", ["IdentityConfirmed"] = "true",
        ["Surroundings"] = "Dry gravel, low sun", ["AirTemperature"] = "24", ["Kit"] = HookId.ToString(),
    };

    /// <summary>The same on a live snake.</summary>
    public static Dictionary<string, string> LiveForm(Guid watcherId) => new(Form(), StringComparer.Ordinal)
    {
        ["Subject"] = "live", ["PermitNumber"] = "CW-2291", ["BitePlanCheckedOn"] = "2026-11-01", ["CommunicationsTestedAt"] = "2026-11-25T09:30",
        ["WatcherId"] = watcherId.ToString(),
    };

    public Task<PlainBrowser> SignInAsync() => Site.SignInAsync(InstructorId);

    /// <summary>Starts a sheet, says that the instructions were read, and gives its address.</summary>
    public async Task<string> StartAsync(PlainBrowser browser, Dictionary<string, string>? form = null, string? path = null)
    {
        var answer = await browser.PostAsync(path ?? StartPath, form ?? Form(), path ?? StartPath);
        Assert.Equal((303, true), (answer.Status, answer.Location?.StartsWith("/en/scoresheets/", StringComparison.Ordinal)));
        Assert.Equal(303, (await browser.PostAsync($"{answer.Location}/instructions", [], StepPage)).Status);
        return answer.Location!; // not null: asserted
    }

    /// <summary>Marks steps from the first on, one letter a step: d, p, n or -.</summary>
    public static async Task<Reply> MarkAsync(PlainBrowser browser, string sheet, string letters, int from = 1)
    {
        Reply? answer = null;
        foreach (var (index, letter) in letters.Index())
            answer = await browser.PostAsync($"{sheet}/steps/{from + index}", new() { ["observation"] = ObservationOf(letter).ToString() }, StepPage);
        return answer!; // not null: there is a letter
    }

    /// <summary>The fields of the sign-off as the page carries them, the name, and an impression and a time where the page asks for them.</summary>
    public static async Task<List<KeyValuePair<string, string>>> SignOffAsync(
        PlainBrowser browser, string sheet, string name = "Winifred Oakley", string remarks = "", string impression = "Ready", string seconds = "4:35")
    {
        var html = (await browser.GetAsync($"{sheet}/sign-off")).Html;
        var form = html[html.IndexOf("/signature\"", StringComparison.Ordinal)..];
        var hidden = Hidden().Matches(form).Select(field => new KeyValuePair<string, string>(field.Groups["name"].Value, field.Groups["value"].Value));
        var token = Token().Match(form).Groups["value"].Value;
        KeyValuePair<string, string>[] asked = [new("Impression", impression), new("Seconds", seconds)];
        var said = asked.Where(field => form.Contains($"name=\"{field.Key}\"", StringComparison.Ordinal));
        return [.. hidden, .. said, new("SignedName", name), new("Remarks", remarks), new("__RequestVerificationToken", token)];
    }

    /// <summary>Starts, marks and signs a sheet; gives its address.</summary>
    public async Task<string> ScoreAsync(PlainBrowser browser, string letters, Dictionary<string, string>? form = null, string? path = null)
    {
        var sheet = await StartAsync(browser, form, path);
        await MarkAsync(browser, sheet, letters);
        var answer = await browser.PostExactlyAsync($"{sheet}/signature", await SignOffAsync(browser, sheet));
        Assert.True(answer.Status == 303 && answer.Location == sheet, string.Join(' ', Mend().Matches(answer.Html).Select(told => told.Value)));
        return sheet;
    }

    public static Guid IdOf(string sheet) => Guid.Parse(sheet[(sheet.LastIndexOf('/') + 1)..]);

    // Any page with a form of the visitor: the strip at the top has the sign-out.
    private const string StepPage = "/en/class-days";

    private static Observation ObservationOf(char letter) => letter switch
    {
        'd' => Observation.Done,
        'p' => Observation.DoneAfterPrompt,
        'n' => Observation.NotDone,
        _ => Observation.NotObserved,
    };

    [GeneratedRegex("<input type=\"hidden\" name=\"(?<name>\\w+)\"(?: value=\"(?<value>[^\"]*)\")?>", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Hidden();

    [GeneratedRegex("class=\"mend\"[^<]*", RegexOptions.None, 1000)]
    private static partial Regex Mend();

    [GeneratedRegex("name=\"__RequestVerificationToken\" type=\"hidden\" value=\"(?<value>[^\"]+)\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Token();
}
