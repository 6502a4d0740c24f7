namespace Training.Web.Demo;

/// <summary>Why the demo does not start.</summary>
public static class DemoProblems
{
    /// <summary>A database lies where the demo's would, and the demo did not make it. Arguments: the folder.</summary>
    public const string NotOurs = "demo.not-ours";

    /// <summary>The demo data or the courses do not lie where they should. Arguments: the folder.</summary>
    public const string FolderMissing = "demo.folder-missing";

    /// <summary>The shipped courses have findings; the demo needs them whole. Arguments: how many.</summary>
    public const string CoursesBroken = "demo.courses-broken";
}
