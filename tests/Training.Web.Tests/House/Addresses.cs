using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using Training.Records;

namespace Training.Web.Tests.House;

/// <summary>Every address of a running site, from its own table of endpoints, and paths that fit them.</summary>
internal static class Addresses
{
    /// <summary>All of them; an address that answers every method once, as GET.</summary>
    public static IReadOnlyList<(RouteEndpoint Endpoint, string Method)> Of(RunningSite site) =>
    [
        .. from endpoint in site.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
           from method in endpoint.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods ?? ["GET"]
           select (endpoint, method),
    ];

    /// <summary>A path for the address that leads to these belongings.</summary>
    /// <param name="endpoint">The address.</param>
    /// <param name="belongings">Whose.</param>
    /// <param name="language">First part of the path.</param>
    /// <param name="isFinished">Sent sittings and signed sheets rather than open ones.</param>
    public static string Path(RouteEndpoint endpoint, Belongings belongings, string language = "en", bool isFinished = false)
    {
        var pattern = endpoint.RoutePattern;
        var segments = pattern.PathSegments.Select(segment => string.Concat(segment.Parts.Select(part => part switch
        {
            Microsoft.AspNetCore.Routing.Patterns.RoutePatternLiteralPart literal => literal.Content,
            Microsoft.AspNetCore.Routing.Patterns.RoutePatternSeparatorPart separator => separator.Content,
            Microsoft.AspNetCore.Routing.Patterns.RoutePatternParameterPart parameter => Value(parameter.Name, pattern.RawText!, belongings, language, isFinished),
            _ => throw new InvalidOperationException(part.ToString()),
        })));
        return "/" + string.Join('/', segments);
    }

    /// <summary>Whether the address names something that belongs to somebody.</summary>
    public static bool NamesBelongings(RouteEndpoint endpoint) => endpoint.RoutePattern.Parameters.Any(parameter => Owned.Contains(parameter.Name));

    private static readonly string[] Owned =
    [
        "employerId", "personId", "classId", "sheetId", "sittingId", "serial", "proposalId", "uploadId", "siteId", "roleId", "panelId", "judgeId", "appealId", "encounterId", "reviewId", "feedId",
        "planId", "addressId",
    ];

    // A new parameter of a route needs its line here; until then the walk fails and says so.
    private static string Value(string name, string pattern, Belongings belongings, string language, bool isFinished) => name switch
    {
        "language" => language,
        "status" => "404",
        "courseId" => pattern.Contains("/checklists/", StringComparison.Ordinal) ? "handler" : "awareness",
        "moduleId" => "bite",
        "questionId" => "bullsnake-friend",
        "checklistId" => "move-to-bucket",
        "roundId" => (isFinished ? belongings.ClosedRoundId : belongings.OpenRoundId).ToString(),
        "correctionId" => belongings.CorrectionId.ToString(),
        "decisionId" => belongings.CorrectionId.ToString(),
        "speciesId" => "timber-rattlesnake",
        "schemeId" => "handler",
        "hash" => belongings.SchemeHash,
        "kid" => "no-key-of-ours",
        "purpose" => "revocation",
        "number" => "1",
        "employerId" => belongings.EmployerId.ToString(),
        "personId" => (pattern.Contains("class-days/", StringComparison.Ordinal) ? belongings.CandidateId : belongings.EmployeeId).ToString(),
        "classId" => (pattern.Contains("my/classes", StringComparison.Ordinal) || pattern.Contains("employers/{employerId", StringComparison.Ordinal)
            ? belongings.SeatClassId
            : belongings.ClassId).ToString(),
        "sheetId" => (isFinished || pattern.EndsWith("signed.pdf", StringComparison.Ordinal) ? belongings.SignedSheetId : belongings.OpenSheetId).ToString(),
        "sittingId" => (isFinished ? belongings.SentSittingId : belongings.OpenSittingId).ToString(),
        "serial" => belongings.Serial,
        "siteId" => belongings.SiteId.ToString(),
        "roleId" => belongings.RoleId.ToString(),
        "pieceId" => belongings.PieceId.ToString(),
        "proposalId" => belongings.ProposalId.ToString(),
        "panelId" => belongings.PanelId.ToString(),
        "judgeId" => belongings.OutsideJudgeId.ToString(),
        "planId" => belongings.PlanId.ToString(),
        "runId" => belongings.RunId.ToString(),
        "paperLanguage" => "es",
        "appealId" => belongings.AppealId.ToString(),
        "encounterId" => belongings.EncounterId.ToString(),
        "reviewId" => belongings.ReviewId.ToString(),
        "planSecret" => belongings.BitePlanSecret,
        "addressId" => belongings.BitePlanAddressId.ToString(),
        "feedSecret" => new string('0', AddressSecret.Length),
        "feedId" => (pattern.Contains("my/calendar", StringComparison.Ordinal) ? belongings.OwnFeedId : belongings.EmployerFeedId).ToString(),
        "mailId" => belongings.MailId.ToString(),
        "uploadId" => (isFinished ? belongings.AppliedRosterId : belongings.OpenRosterId).ToString(),
        _ => throw new InvalidOperationException($"No value for {{{name}}} of {pattern}."),
    };
}
