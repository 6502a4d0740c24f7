using System.Text;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Programme;
using Training.Web.Shelf;
using Training.Web.Features.Decisions;
using Training.Web.Languages;
using static Training.Web.Features.AuditFolders.AuditPage;
using static Training.Web.Features.AuditFolders.AuditText;

namespace Training.Web.Features.AuditFolders;

/// <summary>Writes the rules that the folder's records were made under.</summary>
public sealed class RuleFiles(CoursesByHash courses, CourseShelf shelf, IStringLocalizer<AuditFoldersText> text, PageWords pages)
{
    /// <summary>Adds the files of every text of rules that the folder remembers.</summary>
    public async Task AddAsync(FolderBeingWritten folder, CancellationToken cancellation)
    {
        foreach (var (courseId, hash) in folder.Rules.Order())
        {
            if (await courses.FindAsync(folder.Records, courseId, hash, cancellation) is not { } course) continue;
            // The kept text of a course holds the keys of its questions; its SHA-256 is the hash that decisions name.
            if (folder.IsFull && await folder.Records.FindSnapshotAsync(hash, cancellation) is { } content)
                await folder.Zip.AddAsync($"{FolderBeingWritten.RulesPath(courseId, hash)}.json", "rules", hash, Encoding.UTF8.GetBytes(content), cancellation, hash);
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

            await folder.AddAsync($"{FolderBeingWritten.RulesPath(courseId, hash)}.html", "rules", hash, page.ToBytes(), cancellation);
        }
    }

    private static string Asked(DecisionWords words, Requirement requirement) =>
        words.Age(requirement) is { } age ? $"{words.Of(requirement)} ({age})" : words.Of(requirement);
}
