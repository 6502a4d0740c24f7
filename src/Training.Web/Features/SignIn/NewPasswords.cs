using Microsoft.AspNetCore.Mvc.ModelBinding;
using Microsoft.Extensions.Localization;
using Training.Records;

namespace Training.Web.Features.SignIn;

/// <summary>Looks at the two fields of a new password, as every form that asks for one has them (<c>_NewPassword.cshtml</c>).</summary>
public sealed class NewPasswords(PasswordCheck passwords, IStringLocalizer<SignInText> text)
{
    /// <summary>Puts beside the fields <c>NewPassword</c> and <c>Again</c> what is wrong with them; afterwards a valid form has a password.</summary>
    /// <param name="form">Receives what is wrong.</param>
    /// <param name="account">Whose, or null where it is made along with the password or nobody's.</param>
    /// <param name="name">Sign-in name as typed.</param>
    /// <param name="password">As typed.</param>
    /// <param name="again">As typed the second time.</param>
    public async Task LookAsync(ModelStateDictionary form, Account? account, string? name, string? password, string? again)
    {
        if (password != again) form.AddModelError("Again", text["NotTheSame"]);
        if (await passwords.FindFaultAsync(account, name, password) is not { } fault) return;
        form.AddModelError("NewPassword", fault switch
        {
            PasswordFault.TooShort => text["PasswordTooShort"],
            PasswordFault.TooLong => text["PasswordTooLong"],
            PasswordFault.Known => text["PasswordKnown"],
        });
    }
}
