namespace Training.Web.Commands;

/// <summary>Answers a verb that there is not.</summary>
public static class UnknownVerb
{
    /// <summary>Exit code of a command line that was not understood.</summary>
    public const int ExitCode = 2;

    /// <summary>One line that names the verbs there are.</summary>
    public static int Refuse(string verb, TextWriter errors)
    {
        errors.WriteLine($"There is no verb \"{verb}\". Use serve (run the server), demo (run it on an invented programme), check (look through all courses), keys (list, rotate and distrust what is signed with), log (verify the log of what was issued) or translated (note that a translation says the same as its original).");
        return ExitCode;
    }
}
