using System.IO.Compression;
using System.Text.Json;
using System.Text.Json.Serialization;
using Slabwright.Core.Job;

namespace Slabwright.Data.Store;

/// <summary>A plan as compressed JSON and back. Only what a record was built with is kept; what it computes is left out.</summary>
internal static class PlanJson
{
    private static readonly JsonSerializerOptions Options = new()
    {
        IgnoreReadOnlyProperties = true,
        IncludeFields = true,
        NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals,
        Converters = { new JsonStringEnumConverter() },
    };

    public static byte[] Write(RepairPlan plan)
    {
        using var bytes = new MemoryStream();
        using (var packed = new BrotliStream(bytes, CompressionLevel.Fastest)) JsonSerializer.Serialize(packed, plan, Options);
        return bytes.ToArray();
    }

    public static RepairPlan Read(byte[] bytes)
    {
        using var packed = new BrotliStream(new MemoryStream(bytes), CompressionMode.Decompress);
        return JsonSerializer.Deserialize<RepairPlan>(packed, Options)
            ?? throw new JsonException("The stored plan is empty.");
    }
}
