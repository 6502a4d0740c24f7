using System.Diagnostics;
using System.Globalization;
using System.Resources;
using Training.Courses;
using Training.Documents.Typesetting;
using Training.Scoring;

namespace Training.Documents.Scoresheets;

/// <summary>Every sentence of a printed scoresheet in its language.</summary>
internal sealed class ScoresheetWords(ScoresheetPage page)
{
    private static readonly ResourceManager Texts = Wording.TextsBeside(typeof(ScoresheetWords), "ScoresheetText");

    private readonly Wording _words = new(Texts, page.Language);
    private readonly PaperWords _papers = new(page.Language);

    public string Kind => _words.Text("Kind", page.ChecklistTitle, Candidate);

    /// <summary>What it came to, as the first sentence.</summary>
    public string Title => page.Result.Outcome switch
    {
        PracticalOutcome.Passed => _words.Text("Passed", page.Result.Points, page.Result.MaxPoints),
        PracticalOutcome.Failed => FindStop() is { } stop
            ? _words.Text("StoppedTitle", NumberOf(stop.StepId))
            : _words.Text("Failed", page.Result.Points, page.Result.MaxPoints),
        PracticalOutcome.Incomplete => _words.Text("Incomplete"),
    };

    /// <summary>Why it is not passed, a sentence a reason; steps not observed stand in one.</summary>
    public IEnumerable<string> Reasons
    {
        get
        {
            foreach (var reason in page.Result.Reasons.Where(reason => reason is not ScoresheetReason.StepNotObserved)) yield return Because(reason);
            var unseen = page.Result.Reasons.OfType<ScoresheetReason.StepNotObserved>().Select(reason => NumberOf(reason.StepId)).ToList();
            if (unseen.Count > 0) yield return _words.Text("StepsNotObserved", string.Join(", ", unseen));
        }
    }

    /// <summary>Who, what, where, when and how, each with its label.</summary>
    public IEnumerable<(string Label, string Value)> Particulars
    {
        get
        {
            yield return (_words.Text("CandidateLabel"), page.BadgeNumber is null ? Candidate : _words.Text("WithBadge", Candidate, page.BadgeNumber));
            yield return (_words.Text("IdentityLabel"), _words.Text(page.IdentityConfirmed ? "IdentitySeen" : "IdentityNotSeen"));
            yield return (_words.Text("PracticalLabel"), _words.Text("Practical", page.ChecklistTitle, OnSubject, page.Try));
            yield return (_words.Text("VersionLabel"), page.ChecklistVersion);
            yield return (_words.Text("DayLabel"), _words.Text("DayAndSite", _words.Date(page.ScoredOn), page.SiteName));
            yield return (_words.Text("InstructorLabel"), page.InstructorName ?? _papers.NameErased);
            yield return (_words.Text("ReadLabel"), page.InstructionsReadAt is { } readAt ? _words.Text("ReadAt", ReadLanguage, _words.Moment(readAt)) : ReadLanguage);
            yield return (_words.Text("SurroundingsLabel"), page.Surroundings);
            if (page.AirTemperature is { } air) yield return (_words.Text("AirLabel"), $"{_words.Number(air)} °C");
            yield return (_words.Text("KitLabel"), page.Kit);
            if (page.Live is { } live)
            {
                yield return (_words.Text("PermitLabel"), live.PermitNumber);
                yield return (_words.Text("BitePlanLabel"), _words.Text("CheckedOn", _words.Date(live.BitePlanCheckedOn)));
                yield return (_words.Text("CallLabel"), _words.Text("TriedAt", _words.Moment(live.CommunicationsTestedAt)));
                yield return (_words.Text("WatcherLabel"), live.WatcherName ?? _papers.NameErased);
            }

            if (page.Seconds is { } seconds) yield return (_words.Text("TimeLabel"), Clock(seconds));
            if (page.Impression is { } impression) yield return (_words.Text("ImpressionLabel"), Called(impression));
            if (page.SeparationReason is { } why) yield return (_words.Text("SeparationLabel"), why);
            if (page.Remarks.Length > 0) yield return (_words.Text("RemarksLabel"), page.Remarks);
        }
    }

    public string ParticularsHead => _words.Text("ParticularsHead");

    public string LabelHead => _words.Text("LabelHead");

    public string ValueHead => _words.Text("ValueHead");

    public string MarksHead => _words.Text("MarksHead");

    public string Number => _words.Text("Number");

    public string Step => _words.Text("Step");

    public string Mark => _words.Text("Mark");

    public string Critical => _words.Text("Critical");

    public string CriticalStep => _words.Text("CriticalStep");

    public string SignaturesHead => _words.Text("SignaturesHead");

    public string Meaning => _words.Text("Meaning");

    public string Signed => _words.Text("Signed", page.SignedName, _words.Moment(page.SignedAt));

    public string WordHead => _words.Text("WordHead", Candidate);

    /// <summary>What the candidate said, a line each.</summary>
    public IEnumerable<string> Word => page.CandidateWord switch
    {
        null => [_words.Text("NoWord")],
        ScoresheetWord.Agreed agreed => [_words.Text("Agreed"), _words.Text("Signed", agreed.SignedName, _words.Moment(agreed.KeptAt))],
        ScoresheetWord.Objected objected =>
            [_words.Text("Objected"), objected.Reason, _words.Text("Signed", objected.SignedName, _words.Moment(objected.KeptAt)), _words.Text("IsAppeal")],
        ScoresheetWord.DidNotSign unsigned => [_words.Text("DidNotSign"), unsigned.Reason, _words.Text("Kept", _words.Moment(unsigned.KeptAt))],
        _ => throw new UnreachableException(),
    };

    public string Record => _words.Text("Record", page.RecordId, page.RecordHash);

    public string Caution => _words.Text("CautionText");

    public string Called(Observation mark) => _words.Text(mark switch
    {
        Observation.Done => "Done",
        Observation.DoneAfterPrompt => "DoneAfterPrompt",
        Observation.NotDone => "NotDone",
        Observation.NotObserved => "NotObserved",
    });

    private string Candidate => page.CandidateName ?? _papers.NameErased;

    private string OnSubject => _words.Text(page.Subject switch
    {
        Subject.Model => "OnModel",
        Subject.Live => "OnLive",
    });

    private string ReadLanguage => _words.Text(page.InstructionsLanguage switch
    {
        Language.English => "InEnglish",
        Language.Spanish => "InSpanish",
    });

    private string Called(Impression impression) => _words.Text(impression switch
    {
        Impression.NotReady => "NotReady",
        Impression.Borderline => "Borderline",
        Impression.Ready => "Ready",
        Impression.Assured => "Assured",
    });

    private string Because(ScoresheetReason reason) => reason switch
    {
        ScoresheetReason.BelowPass below => _words.Text("BelowPass", below.Points, below.MaxPoints, below.PassPercent),
        ScoresheetReason.OverTime late => _words.Text("OverTime", Clock(late.Seconds), Clock(late.LimitSeconds)),
        ScoresheetReason.CriticalStepFailed failed => _words.Text("CriticalStepFailed", NumberOf(failed.StepId)),
        ScoresheetReason.Stopped stopped => _words.Text("Stopped", NumberOf(stopped.StepId)),
        _ => throw new UnreachableException(),
    };

    private ScoresheetReason.Stopped? FindStop() => page.Result.Reasons.OfType<ScoresheetReason.Stopped>().FirstOrDefault();

    private int NumberOf(string stepId)
    {
        foreach (var (index, step) in page.Steps.Index())
        {
            if (step.Id == stepId) return index + 1;
        }

        throw new ArgumentException($"A reason names the step {stepId}, which the sheet does not have.", nameof(stepId));
    }

    // Seconds as minutes and seconds: 275 is 4:35.
    private static string Clock(int seconds) => string.Create(CultureInfo.InvariantCulture, $"{seconds / 60}:{seconds % 60:00}");
}
