using System.Text;
using Training.Courses;

namespace Training.Web.Keys;

/// <summary>The folder of our keys: a register of all, and one file for the private part of each that signs. Nobody but the program's own user gets in.</summary>
internal sealed class KeyFolder(string dataFolder)
{
    private const UnixFileMode OwnFolder = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
    private const UnixFileMode OwnFile = UnixFileMode.UserRead | UnixFileMode.UserWrite;
    private const UnixFileMode OfOthers =
        UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.GroupExecute | UnixFileMode.OtherRead | UnixFileMode.OtherWrite | UnixFileMode.OtherExecute;

    // Whoever holds it makes a key at most, which takes a second.
    private const int MostTries = 500;
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(20);

    /// <summary>Full path.</summary>
    public string Folder { get; } = Path.Combine(Path.GetFullPath(dataFolder), "keys");

    /// <summary>Full path of the register.</summary>
    public string RegisterFile => Path.Combine(Folder, "register.json");

    /// <summary>Full path of the private part of a key.</summary>
    public string PrivateFile(RegisteredKey key) => Path.Combine(Folder, $"{key.Use.Name()}-{key.Kid}.pem");

    /// <summary>Tells one state of the register from the next.</summary>
    public (DateTime WrittenAt, long Length) Stamp()
    {
        var file = new FileInfo(RegisterFile);
        return file.Exists ? (file.LastWriteTimeUtc, file.Length) : default;
    }

    /// <summary>Makes the folder where there is none, and keeps other processes from changing it until the answer is disposed.</summary>
    /// <exception cref="IOException">Another process does not let go of it.</exception>
    public IDisposable Hold()
    {
        if (OperatingSystem.IsWindows()) Directory.CreateDirectory(Folder);
        else Directory.CreateDirectory(Folder, OwnFolder);
        for (var tries = 0; ; tries++)
        {
            try
            {
                return Open(Path.Combine(Folder, "lock"), FileMode.OpenOrCreate);
            }
            catch (IOException) when (tries < MostTries)
            {
                Thread.Sleep(Pause);
            }
        }
    }

    /// <summary>Finds the first path that somebody but the owner may use; nothing on a system without such modes.</summary>
    public void LookForOthers(ICollection<Problem> problems)
    {
        if (OperatingSystem.IsWindows()) return;
        foreach (var path in Directory.EnumerateFiles(Folder).Order(StringComparer.Ordinal).Prepend(Folder))
        {
            var mode = File.GetUnixFileMode(path);
            if ((mode & OfOthers) == UnixFileMode.None) continue;
            problems.Add(new(KeysProblems.OpenToOthers, Place.Of("keys"), path, Convert.ToString((int)mode, 8).PadLeft(4, '0')));
            return;
        }
    }

    /// <summary>The register; empty where there is none yet, null where it cannot be read.</summary>
    public KeyRegister? ReadRegister(ICollection<Problem> problems)
    {
        if (!File.Exists(RegisterFile)) return KeyRegister.Empty;
        var register = KeyRegister.Read(File.ReadAllText(RegisterFile));
        if (register is null) problems.Add(new(KeysProblems.RegisterUnreadable, Place.Of("keys"), RegisterFile));
        return register;
    }

    /// <summary>Puts a register in place of the one before: whoever reads sees the one or the other, whenever the power goes.</summary>
    public void Write(KeyRegister register) => Write(RegisterFile, register.Write());

    /// <summary>Keeps the private part of a key, PEM.</summary>
    public void WritePrivate(RegisteredKey key, string pem) => Write(PrivateFile(key), pem);

    /// <summary>The private part of a key, PEM, or null where it is not here.</summary>
    public string? FindPrivate(RegisteredKey key) => File.Exists(PrivateFile(key)) ? File.ReadAllText(PrivateFile(key)) : null;

    /// <summary>Deletes the private part of a key; nothing where it is not here.</summary>
    public void DeletePrivate(RegisteredKey key) => File.Delete(PrivateFile(key));

    private static void Write(string path, string text)
    {
        var unfinished = $"{path}.new";
        File.Delete(unfinished);
        using (var file = Open(unfinished, FileMode.CreateNew))
        {
            file.Write(Encoding.UTF8.GetBytes(text));
            file.Flush(flushToDisk: true);
        }

        File.Move(unfinished, path, overwrite: true);
    }

    private static FileStream Open(string path, FileMode mode)
    {
        var options = new FileStreamOptions { Mode = mode, Access = FileAccess.ReadWrite, Share = FileShare.None };
        // Before the first byte is in it, not after.
        if (!OperatingSystem.IsWindows()) options.UnixCreateMode = OwnFile;
        return new(path, options);
    }
}
