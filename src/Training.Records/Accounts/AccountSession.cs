using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>One sign-in on one device, until it is ended. The cookie only points here, so that ending it works for a copied cookie too.</summary>
public sealed class AccountSession : IVersioned
{
    /// <summary>Made by the application; means nothing without the protected cookie that carries it.</summary>
    public required Guid Id { get; init; }

    /// <summary>Whose.</summary>
    public required Guid AccountId { get; init; }

    /// <summary>When it began, UTC.</summary>
    public required DateTimeOffset StartedAt { get; init; }

    /// <summary>Last request, UTC, to about a minute.</summary>
    public required DateTimeOffset SeenAt { get; set; }

    /// <summary>When it was ended, UTC; null while it lasts.</summary>
    public DateTimeOffset? EndedAt { get; set; }

    /// <inheritdoc/>
    public int Version { get; set; }
}

internal sealed class AccountSessionConfiguration : IEntityTypeConfiguration<AccountSession>
{
    public void Configure(EntityTypeBuilder<AccountSession> builder)
    {
        builder.ToTable("AccountSessions");
        builder.Property(session => session.Id).ValueGeneratedNever();
        builder.Property(session => session.Version).IsConcurrencyToken();
        builder.HasOne<Account>().WithMany().HasForeignKey(session => session.AccountId);
    }
}
