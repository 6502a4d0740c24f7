using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Training.Courses;

namespace Training.Records;

/// <summary>Everything that is kept. Queries and the ways to keep things are extension methods in the feature folders.</summary>
/// <param name="options">Engine and connection; see <see cref="RecordsRegistration.AddRecords"/>.</param>
public sealed class RecordsContext(DbContextOptions<RecordsContext> options) : DbContext(options)
{
    /// <summary>People.</summary>
    public DbSet<Person> Persons => Set<Person>();

    /// <summary>Names of people, apart so that they can be erased.</summary>
    public DbSet<PersonName> PersonNames => Set<PersonName>();

    /// <summary>Employers.</summary>
    public DbSet<Employer> Employers => Set<Employer>();

    /// <summary>Sites of employers.</summary>
    public DbSet<Site> Sites => Set<Site>();

    /// <summary>Which snakes live at sites.</summary>
    public DbSet<SiteSpecies> SiteSpecies => Set<SiteSpecies>();

    /// <summary>Crews of sites.</summary>
    public DbSet<Crew> Crews => Set<Crew>();

    /// <summary>Who works for whom, dated.</summary>
    public DbSet<Employment> Employments => Set<Employment>();

    /// <summary>Badge numbers, dated.</summary>
    public DbSet<Badge> Badges => Set<Badge>();

    /// <summary>Who works on which site, dated.</summary>
    public DbSet<SiteAssignment> SiteAssignments => Set<SiteAssignment>();

    /// <summary>Who works in which crew, dated.</summary>
    public DbSet<CrewAssignment> CrewAssignments => Set<CrewAssignment>();

    /// <summary>Who may teach and score, who may decide, dated.</summary>
    public DbSet<Appointment> Appointments => Set<Appointment>();

    /// <summary>Who sees an employer's people, dated.</summary>
    public DbSet<Representative> Representatives => Set<Representative>();

    /// <summary>Roster files of employers, applied or not.</summary>
    public DbSet<RosterUpload> RosterUploads => Set<RosterUpload>();

    /// <summary>What people sign in with.</summary>
    public DbSet<Account> Accounts => Set<Account>();

    /// <summary>Sign-ins that last, and those that ended.</summary>
    public DbSet<AccountSession> AccountSessions => Set<AccountSession>();

    /// <summary>One-time codes for choosing a password.</summary>
    public DbSet<SignInCode> SignInCodes => Set<SignInCode>();

    /// <summary>Keys that protect cookies and forms.</summary>
    public DbSet<ProtectionKey> ProtectionKeys => Set<ProtectionKey>();

    /// <summary>Every course text that ever served.</summary>
    public DbSet<CourseSnapshotRecord> CourseSnapshots => Set<CourseSnapshotRecord>();

    /// <summary>Which text of a course served since when.</summary>
    public DbSet<CourseInForce> CoursesInForce => Set<CourseInForce>();

    /// <summary>Class days.</summary>
    public DbSet<ClassRecord> Classes => Set<ClassRecord>();

    /// <summary>Who taught at a class.</summary>
    public DbSet<ClassTeaching> ClassTeachings => Set<ClassTeaching>();

    /// <summary>Who may score at a class.</summary>
    public DbSet<ClassScorer> ClassScorers => Set<ClassScorer>();

    /// <summary>Seats that people got at classes, given back or not.</summary>
    public DbSet<ClassAttendance> ClassAttendances => Set<ClassAttendance>();

    /// <summary>Seats that were given back.</summary>
    public DbSet<SeatReturn> SeatReturns => Set<SeatReturn>();

    /// <summary>Who waits for a seat, or did.</summary>
    public DbSet<ClassWaiting> ClassWaitings => Set<ClassWaiting>();

    /// <summary>Who no longer waits.</summary>
    public DbSet<ClassWaitingEnd> ClassWaitingEnds => Set<ClassWaitingEnd>();

    /// <summary>Classes that were moved, or got other seats.</summary>
    public DbSet<ClassChange> ClassChanges => Set<ClassChange>();

    /// <summary>Classes that do not take place.</summary>
    public DbSet<ClassCancellation> ClassCancellations => Set<ClassCancellation>();

    /// <summary>What the people of a class are to know before it, the newest row last.</summary>
    public DbSet<ClassBriefing> ClassBriefings => Set<ClassBriefing>();

    /// <summary>Who came to a class and who did not, the newest row last.</summary>
    public DbSet<ClassPresence> ClassPresences => Set<ClassPresence>();

    /// <summary>What people were told about classes ahead.</summary>
    public DbSet<ClassInvitation> ClassInvitations => Set<ClassInvitation>();

    /// <summary>Reminders of classes that were made.</summary>
    public DbSet<ClassReminder> ClassReminders => Set<ClassReminder>();

    /// <summary>Addresses at which calendar programs read.</summary>
    public DbSet<CalendarFeed> CalendarFeeds => Set<CalendarFeed>();

    /// <summary>Addresses of calendars that no longer answer.</summary>
    public DbSet<CalendarFeedEnd> CalendarFeedEnds => Set<CalendarFeedEnd>();

    /// <summary>How many handlers sites need.</summary>
    public DbSet<CoverNeed> CoverNeeds => Set<CoverNeed>();

    /// <summary>When instructors are free.</summary>
    public DbSet<InstructorDays> InstructorDays => Set<InstructorDays>();

    /// <summary>How long it takes between sites.</summary>
    public DbSet<SiteTravel> SiteTravels => Set<SiteTravel>();

    /// <summary>Plans of classes.</summary>
    public DbSet<ClassPlanRecord> ClassPlans => Set<ClassPlanRecord>();

    /// <summary>Classes of plans, as proposed and as changed.</summary>
    public DbSet<ClassPlanVersion> ClassPlanVersions => Set<ClassPlanVersion>();

    /// <summary>Plans that were accepted.</summary>
    public DbSet<ClassPlanAcceptance> ClassPlanAcceptances => Set<ClassPlanAcceptance>();

    /// <summary>Classes that accepted plans made.</summary>
    public DbSet<AcceptedClass> AcceptedClasses => Set<AcceptedClass>();

    /// <summary>Which parts of which course text people said that they have read.</summary>
    public DbSet<ModuleReading> ModuleReadings => Set<ModuleReading>();

    /// <summary>Which parts about a site people said there that they have read.</summary>
    public DbSet<SiteReading> SiteReadings => Set<SiteReading>();

    /// <summary>Sittings from their start on.</summary>
    public DbSet<StartedSitting> StartedSittings => Set<StartedSitting>();

    /// <summary>Answers of started sittings.</summary>
    public DbSet<StartedAnswer> StartedAnswers => Set<StartedAnswer>();

    /// <summary>Sittings, disputed copies included.</summary>
    public DbSet<SittingRecord> Sittings => Set<SittingRecord>();

    /// <summary>Results of sittings.</summary>
    public DbSet<SittingResultRecord> SittingResults => Set<SittingResultRecord>();

    /// <summary>Questions that turned out wrong, and how they are graded since.</summary>
    public DbSet<KeyCorrectionRecord> KeyCorrections => Set<KeyCorrectionRecord>();

    /// <summary>What leads concluded about certifications that rest on a result which no longer passes.</summary>
    public DbSet<CorrectionCaseRecord> CorrectionCases => Set<CorrectionCaseRecord>();

    /// <summary>Scoresheets, disputed copies included.</summary>
    public DbSet<ScoresheetRecord> Scoresheets => Set<ScoresheetRecord>();

    /// <summary>Scoresheets that were started, signed or not.</summary>
    public DbSet<StartedScoresheet> StartedScoresheets => Set<StartedScoresheet>();

    /// <summary>Courses that were read again after failed quizzes.</summary>
    public DbSet<CourseRereading> CourseRereadings => Set<CourseRereading>();

    /// <summary>The register of kit.</summary>
    public DbSet<KitPiece> KitPieces => Set<KitPiece>();

    /// <summary>What inspections of kit found.</summary>
    public DbSet<KitInspectionRecord> KitInspections => Set<KitInspectionRecord>();

    /// <summary>Kit that was taken out of use.</summary>
    public DbSet<KitRetirementRecord> KitRetirements => Set<KitRetirementRecord>();

    /// <summary>Results of scoresheets.</summary>
    public DbSet<ScoresheetResultRecord> ScoresheetResults => Set<ScoresheetResultRecord>();

    /// <summary>Rounds in which all instructors score the same recorded demonstration.</summary>
    public DbSet<CalibrationRound> CalibrationRounds => Set<CalibrationRound>();

    /// <summary>Ends of those rounds.</summary>
    public DbSet<CalibrationEnd> CalibrationEnds => Set<CalibrationEnd>();

    /// <summary>What instructors marked in them.</summary>
    public DbSet<CalibrationSheet> CalibrationSheets => Set<CalibrationSheet>();

    /// <summary>Written reasons why a scorer may count although they taught.</summary>
    public DbSet<SeparationReasonRecord> SeparationReasons => Set<SeparationReasonRecord>();

    /// <summary>Decisions, granted or not yet.</summary>
    public DbSet<DecisionRecord> Decisions => Set<DecisionRecord>();

    /// <summary>Periods of certifications, each from one decision.</summary>
    public DbSet<PeriodRecord> Periods => Set<PeriodRecord>();

    /// <summary>Suspensions.</summary>
    public DbSet<SuspensionRecord> Suspensions => Set<SuspensionRecord>();

    /// <summary>Ends of suspensions.</summary>
    public DbSet<ReinstatementRecord> Reinstatements => Set<ReinstatementRecord>();

    /// <summary>Withdrawals.</summary>
    public DbSet<WithdrawalRecord> Withdrawals => Set<WithdrawalRecord>();

    /// <summary>Withdrawals that one lead proposed.</summary>
    public DbSet<WithdrawalProposalRecord> WithdrawalProposals => Set<WithdrawalProposalRecord>();

    /// <summary>Ends of proposals: confirmed or taken back.</summary>
    public DbSet<WithdrawalProposalEndRecord> WithdrawalProposalEnds => Set<WithdrawalProposalEndRecord>();

    /// <summary>What candidates said to signed sheets.</summary>
    public DbSet<CandidateWordRecord> CandidateWords => Set<CandidateWordRecord>();

    /// <summary>Appeals and complaints.</summary>
    public DbSet<AppealRecord> Appeals => Set<AppealRecord>();

    /// <summary>Who took which appeal up.</summary>
    public DbSet<AppealTakeUpRecord> AppealTakeUps => Set<AppealTakeUpRecord>();

    /// <summary>What appeals came to.</summary>
    public DbSet<AppealDecisionRecord> AppealDecisions => Set<AppealDecisionRecord>();

    /// <summary>Scoresheets that no longer count.</summary>
    public DbSet<ScoresheetSetAside> ScoresheetSetAsides => Set<ScoresheetSetAside>();

    /// <summary>Sittings that no longer count.</summary>
    public DbSet<SittingSetAside> SittingSetAsides => Set<SittingSetAside>();

    /// <summary>Looks at what had rested on something set aside.</summary>
    public DbSet<SetAsideLookRecord> SetAsideLooks => Set<SetAsideLookRecord>();

    /// <summary>What instructors are competent for.</summary>
    public DbSet<InstructorCompetence> InstructorCompetences => Set<InstructorCompetence>();

    /// <summary>Competences that were ended early.</summary>
    public DbSet<InstructorCompetenceEnd> InstructorCompetenceEnds => Set<InstructorCompetenceEnd>();

    /// <summary>What stands between instructors and others.</summary>
    public DbSet<InstructorConflict> InstructorConflicts => Set<InstructorConflict>();

    /// <summary>Conflicts that ended.</summary>
    public DbSet<InstructorConflictEnd> InstructorConflictEnds => Set<InstructorConflictEnd>();

    /// <summary>Yearly statements of instructors.</summary>
    public DbSet<InstructorStatement> InstructorStatements => Set<InstructorStatement>();

    /// <summary>Papers issued.</summary>
    public DbSet<PaperRecord> Papers => Set<PaperRecord>();

    /// <summary>The files of papers.</summary>
    public DbSet<RenderingRecord> Renderings => Set<RenderingRecord>();

    /// <summary>What the machine-readable forms of papers need besides them.</summary>
    public DbSet<PaperCredential> PaperCredentials => Set<PaperCredential>();

    /// <summary>The log of what was issued.</summary>
    public DbSet<LogLeafRecord> LogLeaves => Set<LogLeafRecord>();

    /// <summary>What the leaves of the log are about.</summary>
    public DbSet<LogOpeningRecord> LogOpenings => Set<LogOpeningRecord>();

    /// <summary>Heads of the log that were signed.</summary>
    public DbSet<TreeHeadRecord> TreeHeads => Set<TreeHeadRecord>();

    /// <summary>Many papers that were asked for at once.</summary>
    public DbSet<PaperRun> PaperRuns => Set<PaperRun>();

    /// <summary>The papers of runs.</summary>
    public DbSet<PaperRunItem> PaperRunItems => Set<PaperRunItem>();

    /// <summary>Papers of runs that could not be made.</summary>
    public DbSet<PaperRunFailure> PaperRunFailures => Set<PaperRunFailure>();

    /// <summary>Mails: waiting, sent and given up.</summary>
    public DbSet<OutgoingMail> OutgoingMails => Set<OutgoingMail>();

    /// <summary>Addresses that mail does not reach.</summary>
    public DbSet<UnreachableAddress> UnreachableAddresses => Set<UnreachableAddress>();

    /// <summary>Reminders that were made.</summary>
    public DbSet<ReminderRecord> Reminders => Set<ReminderRecord>();

    /// <summary>Weekly summaries that were made.</summary>
    public DbSet<DigestRecord> Digests => Set<DigestRecord>();

    /// <summary>What the provider is called, the newest row last.</summary>
    public DbSet<ProviderDetails> ProviderDetails => Set<ProviderDetails>();

    /// <summary>Public addresses that a lead confirmed.</summary>
    public DbSet<AddressConfirmation> AddressConfirmations => Set<AddressConfirmation>();

    /// <summary>Codes that make the first lead.</summary>
    public DbSet<FirstLeadCode> FirstLeadCodes => Set<FirstLeadCode>();

    /// <summary>Reviews that were opened after events.</summary>
    public DbSet<ReviewRecord> Reviews => Set<ReviewRecord>();

    /// <summary>"Do not handle until reviewed", about people.</summary>
    public DbSet<HoldRecord> Holds => Set<HoldRecord>();

    /// <summary>What leads concluded.</summary>
    public DbSet<ReviewConclusionRecord> ReviewConclusions => Set<ReviewConclusionRecord>();

    /// <summary>What leads entered because it asks for a review.</summary>
    public DbSet<EnteredEvent> EnteredEvents => Set<EnteredEvent>();

    /// <summary>What people reported that may affect what they are able to do.</summary>
    public DbSet<CapabilityReport> CapabilityReports => Set<CapabilityReport>();

    /// <summary>Snakes met at work, as they were reported.</summary>
    public DbSet<EncounterRecord> Encounters => Set<EncounterRecord>();

    /// <summary>What was written down about snakes that were moved.</summary>
    public DbSet<RelocationRecord> Relocations => Set<RelocationRecord>();

    /// <summary>What was said about encounters later.</summary>
    public DbSet<EncounterAddition> EncounterAdditions => Set<EncounterAddition>();

    /// <summary>Looks of leads at what encounters ask for.</summary>
    public DbSet<EncounterLook> EncounterLooks => Set<EncounterLook>();

    /// <summary>Who was told of which review.</summary>
    public DbSet<ReviewNotice> ReviewNotices => Set<ReviewNotice>();

    /// <summary>Who was told that guidance changed since they trained.</summary>
    public DbSet<GuidanceNotice> GuidanceNotices => Set<GuidanceNotice>();

    /// <summary>Which courses are used, the newest row last.</summary>
    public DbSet<CourseChoice> CourseChoices => Set<CourseChoice>();

    /// <summary>Reviews of questions.</summary>
    public DbSet<QuestionReview> QuestionReviews => Set<QuestionReview>();

    /// <summary>Whom to call from a site, the newest row last.</summary>
    public DbSet<EmergencyNumbers> EmergencyNumbers => Set<EmergencyNumbers>();

    /// <summary>Bite plans of sites.</summary>
    public DbSet<BitePlan> BitePlans => Set<BitePlan>();

    /// <summary>Addresses at which strangers read them.</summary>
    public DbSet<BitePlanAddress> BitePlanAddresses => Set<BitePlanAddress>();

    /// <summary>Addresses that no longer answer.</summary>
    public DbSet<BitePlanAddressEnd> BitePlanAddressEnds => Set<BitePlanAddressEnd>();

    /// <summary>Panels that set cut scores.</summary>
    public DbSet<Panel> Panels => Set<Panel>();

    /// <summary>Who judges in them.</summary>
    public DbSet<PanelJudge> PanelJudges => Set<PanelJudge>();

    /// <summary>What judges said of questions and steps.</summary>
    public DbSet<PanelRating> PanelRatings => Set<PanelRating>();

    /// <summary>Rounds that ended.</summary>
    public DbSet<PanelRoundEnd> PanelRoundEnds => Set<PanelRoundEnd>();

    /// <summary>What judges would accept.</summary>
    public DbSet<PanelBounds> PanelBounds => Set<PanelBounds>();

    /// <summary>Cuts that leads adopted.</summary>
    public DbSet<CutAdoption> CutAdoptions => Set<CutAdoption>();

    /// <summary>Folders that were made for auditors.</summary>
    public DbSet<AuditFolder> AuditFolders => Set<AuditFolder>();

    /// <inheritdoc/>
    public override int SaveChanges(bool acceptAllChangesOnSuccess)
    {
        PrepareToSave();
        return base.SaveChanges(acceptAllChangesOnSuccess);
    }

    /// <inheritdoc/>
    public override Task<int> SaveChangesAsync(bool acceptAllChangesOnSuccess, CancellationToken cancellationToken = default)
    {
        PrepareToSave();
        return base.SaveChangesAsync(acceptAllChangesOnSuccess, cancellationToken);
    }

    /// <inheritdoc/>
    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        // SQLite neither orders nor compares DateTimeOffset, PostgreSQL refuses other offsets than zero: UTC DateTime everywhere.
        configurationBuilder.Properties<DateTimeOffset>().HaveConversion<UtcInstantConverter>().HavePrecision(3);
        configurationBuilder.Properties<Enum>().HaveConversion<string>().HaveMaxLength(30);
        configurationBuilder.Properties<Duration>().HaveConversion<DurationTextConverter>().HaveMaxLength(6);
    }

    /// <inheritdoc/>
    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.ApplyConfigurationsFromAssembly(typeof(RecordsContext).Assembly);

        // Nothing that evidence points to can be deleted, on any engine; SQL Server would also refuse several cascade paths.
        foreach (var reference in modelBuilder.Model.GetEntityTypes().SelectMany(entity => entity.GetForeignKeys()))
            reference.DeleteBehavior = DeleteBehavior.Restrict;
    }

    private void PrepareToSave()
    {
        foreach (var entry in ChangeTracker.Entries().Where(entry => entry.State is EntityState.Added or EntityState.Modified))
        {
            if (entry is { State: EntityState.Modified, Entity: IVersioned versioned }) versioned.Version++;
            RequireLengths(entry);
        }
    }

    // SQLite keeps any length, the other engines do not: refused here, the three stay alike.
    private static void RequireLengths(EntityEntry entry)
    {
        foreach (var property in entry.Properties)
        {
            if (property.CurrentValue is string text && text.Length > property.Metadata.GetMaxLength())
                throw new ArgumentException($"{entry.Metadata.ClrType.Name}.{property.Metadata.Name} is longer than its column.", nameof(entry));
        }
    }
}
