namespace Training.Web.Features.Employers;

/// <summary>Names the texts of employers and their sites: EmployerText.resx and EmployerText.es.resx.</summary>
public sealed class EmployerText;
