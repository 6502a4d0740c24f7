namespace Training.Web.Doors;

/// <summary>Whose records a door leads to.</summary>
public enum Whose
{
    /// <summary>Nobody's: what every stranger may see.</summary>
    Public,

    /// <summary>Their own: the worker's own results, the instructor's own classes and sheets, the represented employer's own people.</summary>
    Own,

    /// <summary>Everybody's.</summary>
    Any,
}
