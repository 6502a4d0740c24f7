namespace Training.Web.Features.FirstLead;

/// <summary>Names the texts of the first programme lead: FirstLeadText.resx and FirstLeadText.es.resx.</summary>
public sealed class FirstLeadText;
