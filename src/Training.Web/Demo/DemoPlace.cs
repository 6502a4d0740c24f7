using System.Text.Json;
using Microsoft.Data.Sqlite;
using Training.Courses;

namespace Training.Web.Demo;

/// <summary>The folder that the demo calls its own: its database, its papers, its keys, and a note of the day it was made.</summary>
/// <remarks>Without the note the folder is somebody else's and is left alone: the demo never touches a database that it did not make.</remarks>
internal sealed class DemoPlace(string dataFolder)
{
    public string Folder { get; } = Path.Combine(Path.GetFullPath(dataFolder), "demo");

    public string Database => Path.Combine(Folder, "training.db");

    public string Papers => Path.Combine(Folder, "papers");

    private string Mail => Path.Combine(Folder, "mail");

    private string Keys => Path.Combine(Folder, "keys");

    private string NoteFile => Path.Combine(Folder, "made.json");

    /// <summary>Whether a whole demo of this day lies here, made by a program with this schema.</summary>
    public bool IsOf(DateOnly today, string schema) => ReadNote() == new Note(today, schema, IsWhole: true);

    /// <summary>Refuses a folder with a database in it and no note.</summary>
    public void LookForStrangers(ICollection<Problem> problems)
    {
        if (File.Exists(Database) && !File.Exists(NoteFile)) problems.Add(new(DemoProblems.NotOurs, Place.Of("Training:DataFolder"), Folder));
    }

    /// <summary>Empties it for a new demo and says so in the note before anything else is written.</summary>
    public void Clear(DateOnly today, string schema)
    {
        Directory.CreateDirectory(Folder);
        // The pool keeps a deleted file open.
        SqliteConnection.ClearAllPools();
        foreach (var file in new[] { Database, $"{Database}-wal", $"{Database}-shm" }) File.Delete(file);
        foreach (var folder in new[] { Papers, Mail, Keys }.Where(Directory.Exists)) Directory.Delete(folder, recursive: true);
        Directory.CreateDirectory(Papers);
        Write(new(today, schema, IsWhole: false));
    }

    /// <summary>Notes that the demo of this day is whole.</summary>
    public void Finish(DateOnly today, string schema) => Write(new(today, schema, IsWhole: true));

    private void Write(Note note) => File.WriteAllText(NoteFile, JsonSerializer.Serialize(note));

    private Note? ReadNote() => File.Exists(NoteFile) ? JsonSerializer.Deserialize<Note>(File.ReadAllText(NoteFile)) : null;

    private sealed record Note(DateOnly MadeOn, string Schema, bool IsWhole);
}
