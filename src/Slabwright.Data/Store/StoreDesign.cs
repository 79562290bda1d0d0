using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Slabwright.Data.Store;

/// <summary>Lets the migrations tool build a context; see docs/steps/desk.md for the command.</summary>
internal sealed class StoreDesign : IDesignTimeDbContextFactory<StoreContext>
{
    public StoreContext CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<StoreContext>().UseSqlite("Data Source=:memory:").Options);
}
