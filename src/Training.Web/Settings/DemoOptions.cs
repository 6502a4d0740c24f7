using System.ComponentModel.DataAnnotations;

namespace Training.Web.Settings;

/// <summary>Section <c>Training:Demo</c>: what only the demo obeys. <c>serve</c> refuses to start with any of it.</summary>
public sealed class DemoOptions
{
    /// <summary>How many days the demo's clock runs ahead of the machine's, 0 to 1,500. Default 0. The demo is made for the machine's day all the same.</summary>
    [Range(0, 1500)]
    public int DaysAhead { get; init; }
}
