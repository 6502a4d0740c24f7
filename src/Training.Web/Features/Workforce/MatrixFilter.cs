using System.Globalization;
using Training.Records;

namespace Training.Web.Features.Workforce;

/// <summary>Which part of the training matrix is shown, and in which order.</summary>
/// <param name="SiteId">One site, or null for all.</param>
/// <param name="SchemeId">One scheme, or null for all.</param>
/// <param name="Standing">People who stand so under a scheme shown; null for all.</param>
/// <param name="Text">Part of a name or badge number; null for all.</param>
/// <param name="Order">The order of the rows.</param>
public sealed record MatrixFilter(Guid? SiteId, string? SchemeId, StandingChoice? Standing, string? Text = null, PeopleOrder Order = PeopleOrder.Name)
{
    /// <summary>Whether it leaves people out.</summary>
    public bool LeavesOut => SiteId is not null || Standing is not null || Text is not null;

    /// <summary>The address of the matrix with this filter, below the employer's.</summary>
    /// <param name="file"><c>matrix</c> for the page, <c>matrix.csv</c> for the file.</param>
    /// <param name="page">1 for the first.</param>
    public string Address(string file, int page = 1) => file + QueryString.Create(
        new (string Name, string? Value)[]
        {
            ("site", SiteId?.ToString()),
            ("scheme", SchemeId),
            ("standing", Standing?.ToString()),
            ("who", Text),
            ("order", Order == PeopleOrder.Name ? null : Order.ToString()),
            ("page", page > 1 ? page.ToString(CultureInfo.InvariantCulture) : null),
        }.Where(one => one.Value is not null).Select(one => KeyValuePair.Create(one.Name, one.Value)));
}
