namespace Training.Web.Doors;

/// <summary>What somebody is to the programme. A person may be several at once.</summary>
public enum Role
{
    /// <summary>Everybody who can sign in: courses, quizzes and certificates of their own.</summary>
    Worker,

    /// <summary>Appointed to teach and to score.</summary>
    Instructor,

    /// <summary>Represents an employer.</summary>
    Employer,

    /// <summary>Runs the programme.</summary>
    ProgrammeLead,
}
