namespace Training.Web.Features.SignIn;

/// <summary>Why a new password is refused.</summary>
public enum PasswordFault
{
    /// <summary>Fewer than 15 characters.</summary>
    TooShort,

    /// <summary>More characters than are hashed.</summary>
    TooLong,

    /// <summary>Guessers try it early; see <see cref="Doors.KnownPasswords"/>.</summary>
    Known,
}
