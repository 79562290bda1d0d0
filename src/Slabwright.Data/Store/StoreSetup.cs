using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace Slabwright.Data.Store;

/// <summary>Puts the embedded store into a service collection.</summary>
public static class StoreSetup
{
    /// <summary>Name of the database file in the data folder.</summary>
    public const string FileName = "slabwright.db";

    /// <summary>Adds <see cref="ProjectStore"/> over a SQLite file in a data folder, which is made when it is missing.</summary>
    public static IServiceCollection AddProjectStore(this IServiceCollection services, string dataFolder, FolderReading read)
    {
        Directory.CreateDirectory(dataFolder);
        var connection = new SqliteConnectionStringBuilder { DataSource = Path.Combine(dataFolder, FileName) };
        services.AddDbContextFactory<StoreContext>(options => options.UseSqlite(connection.ConnectionString));
        services.AddSingleton(read);
        services.AddSingleton<ProjectStore>();
        return services;
    }
}
