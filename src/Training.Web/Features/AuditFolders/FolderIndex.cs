using System.Globalization;
using System.Text;
using CsvHelper;
using Microsoft.Extensions.Localization;
using Training.Records;
using Training.Web.Features.Shared;
using static Training.Web.Features.AuditFolders.AuditPage;
using static Training.Web.Features.AuditFolders.AuditText;

namespace Training.Web.Features.AuditFolders;

/// <summary>Writes what a folder holds, with the hash of every file.</summary>
public sealed class FolderIndex(IStringLocalizer<AuditFoldersText> text)
{
    /// <summary>The index for programs: a line a file.</summary>
    public static byte[] Csv(FolderBeingWritten folder)
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

    /// <summary>The index for people: what is there, by person.</summary>
    /// <param name="folder">With every other file written.</param>
    /// <param name="title">What it covers, in words.</param>
    /// <param name="index">The index for programs, whose hash stands on the page.</param>
    public AuditPage Page(FolderBeingWritten folder, string title, AuditEntry index)
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
}
