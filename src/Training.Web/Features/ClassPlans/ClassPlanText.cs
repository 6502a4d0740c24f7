namespace Training.Web.Features.ClassPlans;

/// <summary>Names the texts of class plans: ClassPlanText.resx and ClassPlanText.es.resx.</summary>
public sealed class ClassPlanText;
