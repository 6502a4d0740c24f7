namespace Training.Web.Features.Verify;

/// <summary>Names the texts of the check page: VerifyText.resx and VerifyText.es.resx.</summary>
public sealed class VerifyText;
