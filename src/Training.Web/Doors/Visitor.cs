namespace Training.Web.Doors;

/// <summary>Who is signed in, read anew from the records on each request, so that a change of roles acts at once.</summary>
/// <param name="AccountId">What they signed in with.</param>
/// <param name="SessionId">This sign-in.</param>
/// <param name="PersonId">Who they are.</param>
/// <param name="Name">As they write it; their sign-in name where it was erased.</param>
/// <param name="Roles">What they are today; always a worker.</param>
/// <param name="EmployerIds">Whom they represent today.</param>
/// <param name="Zone">IANA zone of their site today, else the provider's.</param>
/// <param name="Today">The date there.</param>
public sealed record Visitor(
    Guid AccountId,
    Guid SessionId,
    Guid PersonId,
    string Name,
    IReadOnlySet<Role> Roles,
    IReadOnlySet<Guid> EmployerIds,
    string Zone,
    DateOnly Today)
{
    /// <summary>Whether they have the role today.</summary>
    public bool Is(Role role) => Roles.Contains(role);
}

/// <summary>Who is asking.</summary>
public static class Visitors
{
    /// <summary>Who is signed in, or null.</summary>
    public static Visitor? FindVisitor(this HttpContext context) => (Visitor?)context.Items[typeof(Visitor)];

    /// <summary>Who is signed in, behind a door that lets nobody else through.</summary>
    /// <exception cref="InvalidOperationException">The address is open to everybody.</exception>
    public static Visitor Visitor(this HttpContext context) =>
        context.FindVisitor() ?? throw new InvalidOperationException("Nobody is signed in here; its row in the table lets everybody through.");
}
