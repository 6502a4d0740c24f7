using System.Xml.Linq;
using Microsoft.AspNetCore.DataProtection.Repositories;
using Microsoft.EntityFrameworkCore;
using Training.Records;

namespace Training.Web.Doors;

/// <summary>Keeps the keys of cookies and forms in the records, so that they outlive a restart and are the same on every node.</summary>
public sealed class KeyRepository(IDbContextFactory<RecordsContext> factory) : IXmlRepository
{
    /// <inheritdoc/>
    public IReadOnlyCollection<XElement> GetAllElements()
    {
        using var records = factory.CreateDbContext();
        return [.. records.ProtectionKeys.AsNoTracking().Select(key => key.Xml).AsEnumerable().Select(xml => XElement.Parse(xml))];
    }

    /// <inheritdoc/>
    public void StoreElement(XElement element, string friendlyName)
    {
        using var records = factory.CreateDbContext();
        records.Add(new ProtectionKey { Id = Guid.CreateVersion7(), Name = friendlyName, Xml = element.ToString(SaveOptions.DisableFormatting) });
        records.SaveChanges();
    }
}
