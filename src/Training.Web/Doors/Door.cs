namespace Training.Web.Doors;

/// <summary>One row of the table: these roles may use this address, and whose records they find there.</summary>
/// <param name="Method">HTTP method in capitals; <c>*</c> for an address that answers all.</param>
/// <param name="Pattern">The route exactly as its controller writes it.</param>
/// <param name="Roles">Who may; empty for everybody, signed in or not.</param>
/// <param name="Whose">Whose records.</param>
public sealed record Door(string Method, string Pattern, IReadOnlyList<Role> Roles, Whose Whose);
