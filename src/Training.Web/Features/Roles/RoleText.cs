namespace Training.Web.Features.Roles;

/// <summary>Names the texts of what somebody may do: RoleText.resx and RoleText.es.resx.</summary>
public sealed class RoleText;
