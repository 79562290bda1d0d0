using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Slabwright.Data.Store;

/// <summary>The embedded store's tables. Contexts are short-lived: one for each operation, from the factory.</summary>
public sealed class StoreContext(DbContextOptions<StoreContext> options) : DbContext(options)
{
    internal DbSet<StoredProject> Projects => Set<StoredProject>();

    internal DbSet<StoredFile> Files => Set<StoredFile>();

    internal DbSet<StoredPlan> Plans => Set<StoredPlan>();

    /// <inheritdoc/>
    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder) =>
        configurationBuilder.Properties<DateTimeOffset>().HaveConversion<UnixMilliseconds>();

    /// <inheritdoc/>
    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<StoredProject>(project =>
        {
            project.ToTable("project");
            project.Property(p => p.Units).HasConversion<string>();
            project.HasIndex(p => p.ImportedFrom).IsUnique();
            project.HasMany(p => p.Files).WithOne().HasForeignKey(f => f.ProjectId);
            project.HasOne(p => p.Plan).WithOne().HasForeignKey<StoredPlan>(p => p.ProjectId);
        });
        modelBuilder.Entity<StoredFile>(file =>
        {
            file.ToTable("project_file");
            file.HasKey(f => new { f.ProjectId, f.Path });
        });
        modelBuilder.Entity<StoredPlan>(plan =>
        {
            plan.ToTable("plan");
            plan.HasKey(p => p.ProjectId);
            plan.Property(p => p.ProjectId).ValueGeneratedNever();
        });
    }

    /// <summary>Moments as whole numbers, which every provider can sort.</summary>
    private sealed class UnixMilliseconds() : ValueConverter<DateTimeOffset, long>(
        moment => moment.ToUnixTimeMilliseconds(), stored => DateTimeOffset.FromUnixTimeMilliseconds(stored));
}
