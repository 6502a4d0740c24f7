using System.Globalization;
using System.Text;
using CsvHelper;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Features.Decisions;
using Training.Web.Features.Programme;
using Training.Web.Features.Scoring;
using Training.Web.Features.Shared;
using Training.Web.Features.Workforce;
using Training.Web.Languages;
using Training.Web.Shelf;
using static Training.Web.Features.AuditFolders.AuditPage;

namespace Training.Web.Features.AuditFolders;

/// <summary>What became of a folder that was written.</summary>
/// <param name="People">In it.</param>
/// <param name="Files">That its index names.</param>
/// <param name="Bytes">Of those files.</param>
/// <param name="IndexSha256">Of <c>index.csv</c>.</param>
public sealed record WrittenFolder(int People, int Files, long Bytes, string IndexSha256);

/// <summary>
/// Puts the evidence of a scope into a zip: each record for people (HTML) and for programs (JSON), stored certificates as they are, and an index
/// with the hash of every file. The same scope on the same records is the same folder, byte by byte.
/// </summary>
/// <remarks>
/// Who is no lead gets no words of questions and no answers: with a sitting that was passed in full they would be its key (docs/rules.md,
/// "Audit folders").
/// </remarks>
public sealed class AuditFolderWriter(
    CoursesByHash courses, CourseShelf shelf, IStringLocalizer<AuditFoldersText> text, PageWords pages)
{
    /// <summary>Most people of a folder.</summary>
    public const int MostPeople = 2_000;

    private const int PeopleABatch = 50;

    /// <summary>Writes the folder; null where it has more people than <see cref="MostPeople"/>.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="scope">Whom and which days it covers.</param>
    /// <param name="isFull">For a lead: with questions, answers and keys.</param>
    /// <param name="title">What it covers, in words.</param>
    /// <param name="language">Of its pages.</param>
    /// <param name="file">Where to.</param>
    /// <param name="cancellation">Ends the writing.</param>
    /// <exception cref="AuditFolderTooLargeException">It does not fit into its bounds.</exception>
    public async Task<WrittenFolder?> WriteAsync(
        RecordsContext records, AuditScope scope, bool isFull, string title, Language language, Stream file, CancellationToken cancellation)
    {
        var people = await records.AuditedPeopleAsync(scope, MostPeople, cancellation);
        if (people.Count > MostPeople) return null;
        using var zip = new AuditZip(file, scope.Through);
        var folder = new Folder(records, zip, scope, isFull, language);
        foreach (var batch in people.Chunk(PeopleABatch)) await AddPeopleAsync(folder, batch, cancellation);
        await AddClassesAsync(folder, cancellation);
        await AddRulesAsync(folder, cancellation);
        var index = await zip.AddAsync("index.csv", "index", "", IndexOf(folder), cancellation);
        var (files, bytes) = (zip.Entries.Count - 1, zip.Bytes - index.Bytes);
        await zip.AddAsync("index.html", "index", "", IndexPage(folder, title, index).ToBytes(), cancellation);
        var sums = string.Concat(zip.Entries.Select(entry => $"{entry.Sha256}  {entry.Path}\n"));
        await zip.AddAsync("sha256sums.txt", "index", "", Encoding.UTF8.GetBytes(sums), cancellation);
        return new(people.Count, files, bytes, index.Sha256);
    }

    private async Task AddPeopleAsync(Folder folder, IReadOnlyList<Guid> ids, CancellationToken cancellation)
    {
        var records = folder.Records;
        var audited = await records.AuditedAsync(ids, folder.Scope, cancellation);
        var sittings = (await records.StoredSittingsAsync([.. audited.SelectMany(person => person.SittingFormIds)], cancellation)).ToDictionary(one => one.Sitting.Id);
        var formIds = audited.SelectMany(person => person.ScoresheetFormIds).ToList();
        var sheets = (await records.StoredScoresheetsAsync(formIds, cancellation)).ToDictionary(one => one.Sheet.Id);
        var beside = await (from sheet in records.Scoresheets.AsNoTracking()
                            where formIds.Contains(sheet.FormId) && sheet.Copy == 1
                            join word in records.CandidateWords.AsNoTracking() on sheet.Id equals word.ScoresheetId into words
                            from word in words.DefaultIfEmpty()
                            join reason in records.SeparationReasons.AsNoTracking() on sheet.Id equals reason.ScoresheetId into reasons
                            from reason in reasons.DefaultIfEmpty()
                            select new { sheet.FormId, Word = word, Reason = reason }).ToDictionaryAsync(row => row.FormId, cancellation);
        var pieces = sheets.Values.SelectMany(one => one.Sheet.Conditions.Pieces).Select(piece => piece.PieceId).Distinct().ToList();
        var labels = await records.KitPieces.Where(piece => pieces.Contains(piece.Id)).ToDictionaryAsync(piece => piece.Id, piece => piece.Label, cancellation);
        var named = ids.Concat(audited.SelectMany(person => person.Decisions).Select(row => row.LeadId).OfType<Guid>())
            .Concat(audited.SelectMany(person => person.Decisions).SelectMany(row => row.Exceptions).Select(row => row.ScorerId))
            .Concat(audited.SelectMany(person => person.Suspensions).Select(row => row.LeadId)).Concat(audited.SelectMany(person => person.Reinstatements).Select(row => row.LeadId))
            .Concat(audited.SelectMany(person => person.Withdrawals).SelectMany(row => new[] { row.LeadId, row.ConfirmedById }))
            .Concat(sheets.Values.SelectMany(one => new[] { one.Sheet.InstructorId, one.Sheet.Live?.WatcherId ?? one.Sheet.InstructorId }));
        var names = await records.NamesOfAsync(named, folder.Scope.Through, cancellation);
        foreach (var person in audited)
        {
            var files = new List<(string, string)>();
            folder.Names[person.PersonId] = names.GetValueOrDefault(person.PersonId);
            await AddStandingAsync(folder, person, names, cancellation);
            foreach (var decision in person.Decisions) await AddDecisionAsync(folder, person, decision, names, cancellation);
            foreach (var paper in person.Papers) await AddCertificateAsync(folder, person.PersonId, paper, cancellation);
            foreach (var id in person.SittingFormIds.Where(sittings.ContainsKey)) await AddSittingAsync(folder, person.PersonId, sittings[id], names, cancellation);
            foreach (var id in person.ScoresheetFormIds.Where(sheets.ContainsKey))
            {
                var (word, reason) = beside.TryGetValue(id, out var rows) ? (rows.Word, rows.Reason) : (null, null);
                await AddScoresheetAsync(folder, sheets[id], word, reason, labels, names, cancellation);
            }

            foreach (var id in person.Classes) folder.Seats.Add((id, person.PersonId));
        }
    }

    private async Task AddStandingAsync(Folder folder, AuditedPerson person, IReadOnlyDictionary<Guid, string> names, CancellationToken cancellation)
    {
        if (person.Periods.Count == 0) return;
        var path = $"people/{person.PersonId}/standing";
        await folder.AddAsync($"{path}.json", "standing", person.PersonId, AuditJson.Write(new
        {
            person.PersonId, person.Periods, person.Suspensions, person.Reinstatements, person.Withdrawals,
        }), cancellation);
        var page = folder.Page(text["StandingOf", NameOf(names, person.PersonId)]);
        page.Heading(text["Periods"]).Table(
            [text["Scheme"], text["Number"], text["FirstDay"], text["LastDay"], text["GraceThrough"]],
            person.Periods.Select(row => (IEnumerable<string>)[Of(shelf.TitleOf(row.SchemeId, folder.Language)), Of(Number(row.Number)), Of(row.StartsOn.Iso()), Of(row.ExpiresOn.Iso()), Of(row.GraceEndsOn.Iso())]));
        if (person.Suspensions.Count > 0)
        {
            page.Heading(text["Suspensions"]).Table(
                [text["Scheme"], text["FirstDay"], text["By"], text["Why"], text["SettleBy"], text["Reinstated"]],
                person.Suspensions.Select(row =>
                {
                    var end = person.Reinstatements.FirstOrDefault(one => one.SuspensionId == row.Id);
                    return (IEnumerable<string>)
                    [
                        Of(shelf.TitleOf(row.SchemeId, folder.Language)), Of(row.StartsOn.Iso()), Of(NameOf(names, row.LeadId)), Of(row.Reason), Of(row.DeadlineOn.Iso()),
                        Of(end is null ? "" : $"{end.ReinstatedOn.Iso()}, {NameOf(names, end.LeadId)}: {end.Reason}"),
                    ];
                }));
        }

        if (person.Withdrawals.Count > 0)
        {
            page.Heading(text["Withdrawals"]).Table(
                [text["Scheme"], text["FirstDay"], text["By"], text["ConfirmedBy"], text["Why"]],
                person.Withdrawals.Select(row => (IEnumerable<string>)
                    [Of(shelf.TitleOf(row.SchemeId, folder.Language)), Of(row.WithdrawnOn.Iso()), Of(NameOf(names, row.LeadId)), Of(NameOf(names, row.ConfirmedById)), Of(row.Reason)]));
        }

        await folder.AddAsync($"{path}.html", "standing", person.PersonId, page.ToBytes(), cancellation);
    }

    private async Task AddDecisionAsync(
        Folder folder, AuditedPerson person, DecisionRecord row, IReadOnlyDictionary<Guid, string> names, CancellationToken cancellation)
    {
        folder.Rules.Add((row.SchemeId, row.CourseHash));
        var period = person.Periods.FirstOrDefault(one => one.DecisionId == row.Id);
        var path = $"people/{row.PersonId}/decisions/{row.DecidedOn.Iso()}-{row.SchemeId}-{row.Id}";
        await folder.AddAsync($"{path}.json", "decision", row.Id, AuditJson.Write(new
        {
            row.Id, row.PersonId, row.SchemeId, row.CourseHash, row.Route, row.Outcome, row.DecidedOn, row.Zone, row.LeadId, Reasons = AuditJson.Stored(row.Reasons),
            row.KeptAt, Period = period, RestsOn = row.Evidence.OrderBy(one => one.Position).Select(one => new { one.SittingResultId, one.ScoresheetResultId }),
            Exceptions = row.Exceptions.OrderBy(one => one.ScoresheetResultId),
        }), cancellation);
        var titles = shelf.Courses.Titles(folder.Language);
        var words = pages.Decisions(titles, names);
        var page = folder.Page(text["DecisionOf", shelf.TitleOf(row.SchemeId, folder.Language), NameOf(names, row.PersonId)])
            .Fact(text["DecidedOn"], $"{row.DecidedOn.Iso()} ({row.Zone})")
            .Fact(text["DecidedBy"], row.LeadId is { } lead ? NameOf(names, lead) : text["TheRule"])
            .Fact(text["Outcome"], (row.Outcome, row.Route) switch
            {
                (DecisionOutcome.Granted, Certification.Route.Grant) => text["Granted"],
                (DecisionOutcome.Granted, Certification.Route.Renewal) => text["Renewed"],
                (DecisionOutcome.NotYet, _) => text["NotYet"],
                (DecisionOutcome.Refused, _) => text["Refused"],
                _ => throw new System.Diagnostics.UnreachableException(),
            })
            .Fact(text["HoldsFrom"], period is null ? null : $"{period.StartsOn.Iso()} – {period.ExpiresOn.Iso()}")
            .Fact(text["RulesHash"], row.CourseHash)
            .Fact(text["RecordId"], row.Id.ToString());
        foreach (var reason in row.ReadReasons()) page.Fact(text["WhyNot"], words.Of(reason));
        foreach (var one in row.Evidence.OrderBy(one => one.Position)) page.Fact(text["RestsOn"], (one.SittingResultId ?? one.ScoresheetResultId).ToString());
        foreach (var one in row.Exceptions.OrderBy(one => one.ScoresheetResultId)) page.Fact(text["Exception"], $"{NameOf(names, one.ScorerId)}: {one.Reason}");
        page.Link(text["ToRules"], $"../../../{RulesPath(row.SchemeId, row.CourseHash)}.html");
        await folder.AddAsync($"{path}.html", "decision", row.Id, page.ToBytes(), cancellation);
    }

    // One paper's files at a time: those of a batch of people would not fit into memory.
    private static async Task AddCertificateAsync(Folder folder, Guid personId, PaperRecord paper, CancellationToken cancellation)
    {
        var files = await folder.Records.Renderings.AsNoTracking().Where(file => file.PaperId == paper.Id && file.Format == RenderingFormat.CertificatePdf)
            .OrderBy(file => file.Language).ToListAsync(cancellation);
        foreach (var file in files)
        {
            await folder.Zip.AddAsync(
                $"people/{personId}/certificates/{paper.Serial}-{file.Language.Tag()}.pdf", "certificate", paper.Id.ToString(), file.Bytes, cancellation, file.Sha256);
        }
    }

    private async Task AddSittingAsync(
        Folder folder, Guid personId, StoredSitting stored, IReadOnlyDictionary<Guid, string> names, CancellationToken cancellation)
    {
        var sitting = stored.Sitting;
        var courseId = await folder.CourseIdAsync(sitting.Draw.CourseHash, cancellation);
        var course = courseId is null ? null : await courses.FindAsync(folder.Records, courseId, sitting.Draw.CourseHash, cancellation);
        if (courseId is not null) folder.Rules.Add((courseId, sitting.Draw.CourseHash));
        var path = $"people/{personId}/sittings/{stored.TakenOn.Iso()}-{sitting.Draw.QuizId}-{sitting.Id}";
        var answers = sitting.Answers.ToDictionary(answer => answer.QuestionId);
        await folder.AddAsync($"{path}.json", "sitting", sitting.Id, folder.IsFull ? FullSitting(stored) : OpenSitting(stored), cancellation);

        var page = folder.Page(text["SittingOf", course?.Scheme.Words[folder.Language].Title ?? sitting.Draw.QuizId, NameOf(names, personId)])
            .Fact(text["Day"], $"{stored.TakenOn.Iso()} ({stored.Zone})")
            .Fact(text["Started"], Instant(sitting.StartedAt)).Fact(text["Sent"], Instant(sitting.SubmittedAt))
            .Fact(text["RulesHash"], sitting.Draw.CourseHash).Fact(text["RecordId"], sitting.Id.ToString());
        foreach (var result in stored.Results)
        {
            page.Heading(text["ResultNumber", result.Id])
                .Fact(text["Outcome"], result.Result.IsPassed ? text["Passed"] : text["NotPassed"])
                .Fact(text["Points"], $"{result.Result.Points} / {result.Result.MaxPoints}")
                .Fact(text["GradedAt"], Instant(result.GradedAt)).Fact(text["GradedAgain"], result.CorrectionReason)
                .Table([text["Topic"], text["Points"]], result.Result.Topics.Select(topic => (IEnumerable<string>)
                    [Of(course?.Words[folder.Language].Topics.GetValueOrDefault(topic.Topic) ?? topic.Topic), Of($"{topic.Points} / {topic.MaxPoints}")]));
        }

        var marks = stored.Results.Count == 0 ? [] : stored.Results[^1].Result.Questions.ToDictionary(one => one.QuestionId, one => one.Mark);
        page.Heading(text["Shown"]);
        if (folder.IsFull)
        {
            page.Table(
                [text["Number"], text["Question"], text["OptionsShown"], text["Answered"], text["Mark"], text["Key"]],
                sitting.Draw.Questions.Index().Select(one => ShownQuestion(
                    one.Index + 1, one.Item, course, answers.GetValueOrDefault(one.Item.QuestionId),
                    marks.TryGetValue(one.Item.QuestionId, out var mark) ? Said(mark) : "", folder.Language)));
        }
        else
        {
            page.Fact(text["Closed"], text["ClosedWhy"]).Table(
                [text["Number"], text["Question"], text["Version"], text["Answered"]],
                sitting.Draw.Questions.Index().Select(one => (IEnumerable<string>)
                [
                    Of(Number(one.Index + 1)), Of(one.Item.QuestionId), Of(one.Item.QuestionVersion),
                    Of(answers.GetValueOrDefault(one.Item.QuestionId) is { } answer ? $"{Instant(answer.SavedAt)}, {answer.Language.Tag()}" : ""),
                ]));
        }

        await folder.AddAsync($"{path}.html", "sitting", sitting.Id, page.ToBytes(), cancellation);
    }

    private static IEnumerable<string> ShownQuestion(int number, DrawnQuestion drawn, Course? course, Answer? answer, string mark, Language language)
    {
        var question = course?.Questions.FirstOrDefault(one => one.Id == drawn.QuestionId);
        var words = question?.Words[answer?.Language ?? language];
        string Option(string id) => words is null ? Of(id) : words.OptionHtml.TryGetValue(id, out var html) ? $"<span>{html}</span> <small>{Of(id)}</small>"
            : words.MatchText.TryGetValue(id, out var match) ? $"{Of(match)} <small>{Of(id)}</small>" : Of(id);
        var key = question?.Key switch
        {
            QuestionKey.One one => one.OptionId,
            QuestionKey.Several several => string.Join(", ", several.OptionIds),
            QuestionKey.Order order => string.Join(" → ", order.OptionIds),
            QuestionKey.Number of => string.Create(CultureInfo.InvariantCulture, $"{of.Value} ± {of.Tolerance} {of.Unit}"),
            QuestionKey.Match match => string.Join(", ", match.Pairs),
            QuestionKey.Spot spot => spot.RegionId,
            null => "",
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        return
        [
            Of(Number(number)), $"{words?.StemHtml ?? Of(drawn.QuestionId)} <small>{Of(drawn.QuestionId)}</small>", string.Join("<br>", drawn.OptionIds.Select(Option)),
            Of(answer is null ? "" : answer.Number?.ToString(CultureInfo.InvariantCulture) ?? string.Join(", ", answer.OptionIds)), Of(mark), Of(key),
        ];
    }

    private static byte[] FullSitting(StoredSitting stored) => AuditJson.Write(new
    {
        stored.Sitting, stored.TakenOn, stored.Zone, stored.Reading,
        Results = stored.Results.Select(one => new
        {
            one.Id, one.GradedAt, one.CorrectionReason, one.Result.CourseHash, one.Result.IsPassed, one.Result.Points, one.Result.MaxPoints, one.Result.Topics,
            one.Result.Questions, Reasons = one.Result.Reasons.Select(AuditJson.Case),
        }),
    });

    // Of a question its id, version and place; of an answer when it came; of a result the topics. Reasons that name a question are only counted.
    private static byte[] OpenSitting(StoredSitting stored)
    {
        var sitting = stored.Sitting;
        var answers = sitting.Answers.ToDictionary(answer => answer.QuestionId);
        return AuditJson.Write(new
        {
            sitting.Id, sitting.PersonId, sitting.Draw.CourseHash, sitting.Draw.QuizId, sitting.StartedAt, sitting.SubmittedAt, stored.TakenOn, stored.Zone, stored.Reading,
            Questions = sitting.Draw.Questions.Select(drawn => new
            {
                drawn.QuestionId, drawn.QuestionVersion, AnsweredAt = answers.GetValueOrDefault(drawn.QuestionId)?.SavedAt, answers.GetValueOrDefault(drawn.QuestionId)?.Language,
            }),
            Results = stored.Results.Select(one => new
            {
                one.Id, one.GradedAt, one.CorrectionReason, one.Result.CourseHash, one.Result.IsPassed, one.Result.Points, one.Result.MaxPoints, one.Result.Topics,
                CriticalMissed = one.Result.Reasons.OfType<SittingReason.CriticalMissed>().Count(),
            }),
        });
    }

    private async Task AddScoresheetAsync(
        Folder folder, StoredScoresheet stored, CandidateWordRecord? word, SeparationReasonRecord? reason, IReadOnlyDictionary<Guid, string> labels,
        IReadOnlyDictionary<Guid, string> names, CancellationToken cancellation)
    {
        var sheet = stored.Sheet;
        var courseId = await folder.CourseIdAsync(sheet.CourseHash, cancellation);
        var course = courseId is null ? null : await courses.FindAsync(folder.Records, courseId, sheet.CourseHash, cancellation);
        if (courseId is not null) folder.Rules.Add((courseId, sheet.CourseHash));
        var checklist = course?.Checklists.FirstOrDefault(list => list.Id == sheet.ChecklistId);
        var path = $"people/{sheet.CandidateId}/scoresheets/{stored.ScoredOn.Iso()}-{sheet.ChecklistId}-{sheet.Id}";
        await folder.AddAsync($"{path}.json", "scoresheet", sheet.Id, AuditJson.Write(new
        {
            Sheet = sheet, stored.ScoredOn, stored.Zone, CandidateWord = word, SeparationReason = reason,
            Results = stored.Results.Select(one => new
            {
                one.Id, one.GradedAt, one.Result.ChecklistVersion, one.Result.Outcome, one.Result.Points, one.Result.MaxPoints, Reasons = one.Result.Reasons.Select(AuditJson.Case),
            }),
        }), cancellation);

        var page = folder.Page(text["SheetOf", checklist?.Words[folder.Language].Title ?? sheet.ChecklistId, NameOf(names, sheet.CandidateId)])
            .Fact(text["Day"], $"{stored.ScoredOn.Iso()} ({stored.Zone})")
            .Fact(text["Subject"], pages.Scoring.Of(sheet.Subject)).Fact(text["Try"], Number(sheet.Try))
            .Fact(text["ScoredBy"], NameOf(names, sheet.InstructorId))
            .Fact(text["Signed"], $"{sheet.SignedName}, {Instant(sheet.SignedAt)}")
            .Fact(text["Identity"], sheet.IdentityConfirmed ? text["Yes"] : text["No"])
            .Fact(text["InstructionsRead"], sheet.InstructionsReadAt is { } readAt ? Instant(readAt) : null)
            .Fact(text["Surroundings"], sheet.Conditions.Surroundings)
            .Fact(text["AirTemperature"], sheet.Conditions.AirTemperature is { } air ? $"{Number(air)} °C" : null)
            .Fact(text["Kit"], sheet.Conditions.Kit)
            .Fact(text["KitRegister"], string.Join(", ", sheet.Conditions.Pieces.Select(piece => $"{labels.GetValueOrDefault(piece.PieceId)} ({piece.InspectionId})")))
            .Fact(text["Permit"], sheet.Live?.PermitNumber).Fact(text["BitePlanChecked"], sheet.Live?.BitePlanCheckedOn.Iso())
            .Fact(text["CallTested"], sheet.Live is { } live ? Instant(live.CommunicationsTestedAt) : null)
            .Fact(text["Watcher"], sheet.Live is { } watched ? NameOf(names, watched.WatcherId) : null)
            .Fact(text["Impression"], pages.Scoring.Of(sheet.Impression))
            .Fact(text["Seconds"], sheet.Seconds is { } seconds ? ScoringWords.Clock(seconds) : null)
            .Fact(text["Remarks"], sheet.Remarks)
            .Fact(text["CandidateSaid"], word is null ? null : string.Join(", ", new[] { Said(word.Word), word.SignedName, word.Reason, Instant(word.KeptAt) }.OfType<string>()))
            .Fact(text["Exception"], reason?.Reason)
            .Fact(text["RulesHash"], sheet.CourseHash).Fact(text["RecordId"], sheet.Id.ToString());
        foreach (var result in stored.Results)
        {
            page.Heading(text["ResultNumber", result.Id]).Fact(text["Points"], $"{result.Result.Points} / {result.Result.MaxPoints}").Fact(text["GradedAt"], Instant(result.GradedAt));
            if (checklist is null) continue;
            page.Fact(text["Outcome"], pages.Scoring.Says(result.Result, checklist));
            foreach (var because in pages.Scoring.Because(result.Result.Reasons, checklist)) page.Fact(text["WhyNot"], because);
        }

        page.Heading(text["Steps"]).Table(
            [text["Number"], text["Step"], text["Critical"], text["Mark"]],
            sheet.Observations.Index().Select(one => (IEnumerable<string>)
            [
                Of(Number(one.Index + 1)),
                checklist?.Words[folder.Language].StepHtml.GetValueOrDefault(one.Item.StepId) ?? Of(one.Item.StepId),
                Of(checklist?.Steps.FirstOrDefault(step => step.Id == one.Item.StepId)?.IsCritical == true ? text["Yes"] : ""),
                Of(pages.Scoring.Of(one.Item.Observation)),
            ]));
        await folder.AddAsync($"{path}.html", "scoresheet", sheet.Id, page.ToBytes(), cancellation);
    }

    // Who else had a seat is not this folder's business: only how many there were.
    private async Task AddClassesAsync(Folder folder, CancellationToken cancellation)
    {
        var (records, names) = (folder.Records, folder.Names);
        foreach (var ids in folder.Seats.Select(seat => seat.ClassId).Distinct().Order().Chunk(PersonFileQueries.MostFiles))
        {
            var days = await (from day in records.Classes.AsNoTracking()
                              where ids.Contains(day.Id)
                              join site in records.Sites.AsNoTracking() on day.SiteId equals site.Id
                              orderby day.HeldOn, day.Id
                              select new { Day = day, site.Name, site.Zone, Seats = records.SeatsHeld().Count(seat => seat.ClassId == day.Id) }).ToListAsync(cancellation);
            var teachers = (await records.ClassTeachings.AsNoTracking().Where(row => ids.Contains(row.ClassId)).OrderBy(row => row.InstructorId).ToListAsync(cancellation)).ToLookup(row => row.ClassId, row => row.InstructorId);
            var scorers = (await records.ClassScorers.AsNoTracking().Where(row => ids.Contains(row.ClassId)).OrderBy(row => row.InstructorId).ToListAsync(cancellation)).ToLookup(row => row.ClassId, row => row.InstructorId);
            var words = (await records.ClassPresences.AsNoTracking().Where(row => ids.Contains(row.ClassId)).ToListAsync(cancellation))
                .GroupBy(row => (row.ClassId, row.PersonId)).ToDictionary(group => group.Key, group => group.MaxBy(row => row.Number)!); // not null: no group is empty
            var staff = await records.NamesOfAsync(teachers.Concat(scorers).SelectMany(group => group), folder.Scope.Through, cancellation);
            foreach (var one in days)
            {
                var present = folder.Seats.Where(seat => seat.ClassId == one.Day.Id).Select(seat => seat.PersonId).ToList();
                var path = $"classes/{one.Day.HeldOn.Iso()}-{one.Day.CourseId}-{one.Day.Id}";
                await folder.AddAsync($"{path}.json", "class", one.Day.Id, AuditJson.Write(new
                {
                    one.Day.Id, one.Day.SiteId, Site = one.Name, one.Zone, one.Day.HeldOn, one.Day.CourseId, one.Day.Capacity, SeatsTaken = one.Seats,
                    Teachers = teachers[one.Day.Id], Scorers = scorers[one.Day.Id],
                    People = present.Select(id => new { PersonId = id, Said = words.GetValueOrDefault((one.Day.Id, id)) }),
                }), cancellation);
                var page = folder.Page(text["ClassOf", shelf.TitleOf(one.Day.CourseId, folder.Language), one.Day.HeldOn.Iso()])
                    .Fact(text["Site"], one.Name)
                    .Fact(text["TaughtBy"], string.Join(", ", teachers[one.Day.Id].Select(id => NameOf(staff, id))))
                    .Fact(text["MayScore"], string.Join(", ", scorers[one.Day.Id].Select(id => NameOf(staff, id))))
                    .Fact(text["Seats"], $"{one.Seats} / {one.Day.Capacity}")
                    .Fact(text["RecordId"], one.Day.Id.ToString())
                    .Heading(text["WhoWasThere"])
                    .Table([text["Name"], text["WasThere"], text["Why"]], present.Select(id => (IEnumerable<string>)
                    [
                        Of(names.GetValueOrDefault(id) ?? text["NameErased"]),
                        Of(words.GetValueOrDefault((one.Day.Id, id))?.Presence switch { Presence.Came => text["Yes"], Presence.DidNotCome => text["No"], null => text["NotMarked"] }),
                        Of(words.GetValueOrDefault((one.Day.Id, id))?.Reason),
                    ]));
                await folder.AddAsync($"{path}.html", "class", one.Day.Id, page.ToBytes(), cancellation);
            }
        }
    }

    private async Task AddRulesAsync(Folder folder, CancellationToken cancellation)
    {
        foreach (var (courseId, hash) in folder.Rules.Order())
        {
            if (await courses.FindAsync(folder.Records, courseId, hash, cancellation) is not { } course) continue;
            // The kept text of a course holds the keys of its questions; its SHA-256 is the hash that decisions name.
            if (folder.IsFull && await folder.Records.FindSnapshotAsync(hash, cancellation) is { } content)
                await folder.Zip.AddAsync($"{RulesPath(courseId, hash)}.json", "rules", hash, Encoding.UTF8.GetBytes(content), cancellation, hash);
            var (scheme, words) = (course.Scheme, course.Scheme.Words[folder.Language]);
            var asked = pages.Decisions(shelf.Courses.Append(course).DistinctBy(one => one.Id).ToList().Titles(folder.Language), new Dictionary<Guid, string>());
            var page = folder.Page(text["RulesOf", words.Title])
                .Fact(text["RulesHash"], hash).Fact(text["InForceFrom"], scheme.EffectiveFrom.Iso())
                .Fact(text["Validity"], Written.For(scheme.Terms.Validity)).Fact(text["Window"], Written.For(scheme.Terms.Window)).Fact(text["Grace"], Written.For(scheme.Terms.Grace));
            foreach (var requirement in scheme.Grant) page.Fact(text["GrantAsks"], Asked(asked, requirement));
            foreach (var requirement in scheme.Renewal) page.Fact(text["RenewalAsks"], Asked(asked, requirement));
            page.Fact(text["QuizPass"], $"{course.Quiz.PassPercent} %");
            foreach (var html in new[] { words.ScopeHtml, words.TasksHtml, words.CompetenceHtml, words.PrerequisitesHtml, words.ConductHtml, words.SuspensionHtml, words.ValidityHtml, words.CompletionHtml })
                page.Words(html);
            foreach (var list in course.Checklists)
            {
                var said = list.Words[folder.Language];
                page.Heading(said.Title).Fact(text["RecordId"], list.Version).Fact(text["ChecklistPass"], $"{list.PassPercent} %").Words(said.InstructionsHtml).Table(
                    [text["Number"], text["Step"], text["Critical"]],
                    list.Steps.Index().Select(step => (IEnumerable<string>)[Of(Number(step.Index + 1)), said.StepHtml.GetValueOrDefault(step.Item.Id) ?? Of(step.Item.Id), Of(step.Item.IsCritical ? text["Yes"] : "")]));
            }

            await folder.AddAsync($"{RulesPath(courseId, hash)}.html", "rules", hash, page.ToBytes(), cancellation);
        }
    }

    private static string Asked(DecisionWords words, Requirement requirement) =>
        words.Age(requirement) is { } age ? $"{words.Of(requirement)} ({age})" : words.Of(requirement);

    private static byte[] IndexOf(Folder folder)
    {
        using var bytes = new MemoryStream();
        using (var writer = new StreamWriter(bytes, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)))
        using (var csv = new CsvWriter(writer, SpreadsheetFile.Layout))
        {
            foreach (var head in new[] { "path", "kind", "id", "bytes", "sha256", "kept_sha256" }) csv.WriteField(head);
            csv.NextRecord();
            foreach (var entry in folder.Zip.Entries)
            {
                foreach (var cell in new[] { entry.Path, entry.Kind, entry.Id, entry.Bytes.ToString(CultureInfo.InvariantCulture), entry.Sha256, entry.KeptSha256 ?? "" }) csv.WriteField(cell);
                csv.NextRecord();
            }
        }

        return bytes.ToArray();
    }

    private AuditPage IndexPage(Folder folder, string title, AuditEntry index)
    {
        var page = folder.Page(title)
            .Fact(text["Days"], $"{folder.Scope.From.Iso()} – {folder.Scope.Through.Iso()}")
            .Fact(text["People"], Number(folder.Names.Count))
            .Fact(text["IndexHash"], index.Sha256)
            .Fact(text["HowToCheck"], text["HowToCheckWhat"])
            .Fact(text["Closed"], folder.IsFull ? text["OpenWhy"] : text["ClosedWhy"]);
        var entries = folder.Zip.Entries.Where(entry => !entry.Path.EndsWith(".json", StringComparison.Ordinal) && entry.Kind != "index").ToList();
        page.Heading(text["WhatIsThere"]).Table(
            [text["Kind"], text["Files"]], folder.Zip.Entries.Where(entry => entry.Kind != "index").CountBy(entry => entry.Kind).OrderBy(pair => pair.Key, StringComparer.Ordinal)
                .Select(pair => (IEnumerable<string>)[Of(Said(pair.Key)), Of(Number(pair.Value))]));
        var byPerson = entries.Where(entry => entry.Path.StartsWith("people/", StringComparison.Ordinal)).ToLookup(entry => entry.Path.Split('/')[1]);
        foreach (var (id, name) in folder.Names.OrderBy(pair => pair.Value is null).ThenBy(pair => KeyText.Plain(pair.Value ?? ""), StringComparer.Ordinal).ThenBy(pair => pair.Key))
        {
            page.Heading(name ?? text["NameErased"]);
            foreach (var entry in byPerson[id.ToString()]) page.Link(entry.Path[(entry.Path.IndexOf('/', "people/".Length) + 1)..], entry.Path);
        }

        page.Heading(text["ClassesAndRules"]);
        foreach (var entry in entries.Where(entry => !entry.Path.StartsWith("people/", StringComparison.Ordinal))) page.Link(entry.Path, entry.Path);
        return page;
    }

    private string Said(Mark mark) => mark switch
    {
        Mark.Right => text["Right"],
        Mark.Wrong => text["Wrong"],
        Mark.Blank => text["Blank"],
        Mark.Late => text["Late"],
        Mark.LeftOut => text["LeftOut"],
    };

    private string Said(CandidateWord word) => word switch
    {
        CandidateWord.Agreed => text["Agreed"],
        CandidateWord.Objected => text["Objected"],
        CandidateWord.DidNotSign => text["DidNotSign"],
    };

    private string Said(string kind) => kind switch
    {
        "certificate" => text["Certificates"],
        "class" => text["Classes"],
        "decision" => text["Decisions"],
        "rules" => text["Rules"],
        "scoresheet" => text["Scoresheets"],
        "sitting" => text["Sittings"],
        "standing" => text["Standings"],
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static string RulesPath(string courseId, string hash) => $"rules/{courseId}-{hash[..12]}";

    private string NameOf(IReadOnlyDictionary<Guid, string> names, Guid id) => names.GetValueOrDefault(id) ?? text["NameErased"].Value;

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Instant(DateTimeOffset instant) => instant.ToString("yyyy-MM-dd HH:mm:ss 'UTC'", CultureInfo.InvariantCulture);

    /// <summary>A folder while it is written.</summary>
    private sealed class Folder(RecordsContext records, AuditZip zip, AuditScope scope, bool isFull, Language language)
    {
        private readonly Dictionary<string, string?> courseIds = new(StringComparer.Ordinal);

        public RecordsContext Records => records;

        public AuditZip Zip => zip;

        public AuditScope Scope => scope;

        public bool IsFull => isFull;

        public Language Language => language;

        public Dictionary<Guid, string?> Names { get; } = [];

        public List<(Guid ClassId, Guid PersonId)> Seats { get; } = [];

        public HashSet<(string CourseId, string Hash)> Rules { get; } = [];

        public AuditPage Page(string title) => new(language.Tag(), title);

        public Task<AuditEntry> AddAsync(string path, string kind, object id, byte[] content, CancellationToken cancellation) =>
            zip.AddAsync(path, kind, string.Create(CultureInfo.InvariantCulture, $"{id}"), content, cancellation);

        public async Task<string?> CourseIdAsync(string hash, CancellationToken cancellation) =>
            courseIds.TryGetValue(hash, out var id)
                ? id
                : courseIds[hash] = await records.CourseSnapshots.Where(one => one.Hash == hash).Select(one => one.CourseId).SingleOrDefaultAsync(cancellation);
    }
}
