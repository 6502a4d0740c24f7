namespace Training.Web.Features.Held;

/// <summary>Names the texts of what is held over all employers: HeldText.resx and HeldText.es.resx.</summary>
public sealed class HeldText;
