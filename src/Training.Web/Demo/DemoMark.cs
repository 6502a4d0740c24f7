namespace Training.Web.Demo;

/// <summary>Whether what the records hold is invented; papers and the check page then say DEMO.</summary>
/// <param name="IsOn">True in the demo, false everywhere else.</param>
public sealed record DemoMark(bool IsOn);
