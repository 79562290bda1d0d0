using System.Net;

namespace Slabwright.Desk.Start;

/// <summary>
/// The desk has no accounts yet, so whoever reaches it may do everything. It therefore listens on this machine only.
/// </summary>
internal static class Loopback
{
    /// <summary>Why the addresses are refused, in a sentence; null when all of them are on this machine.</summary>
    public static string? Refusal(string urls, IConfigurationSection kestrelEndpoints)
    {
        if (kestrelEndpoints.Exists())
            return "Kestrel:Endpoints is set. Remove it and use --urls, so that the desk can see that it stays on this machine.";
        foreach (var url in urls.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (!IsLoopback(url))
                return $"{url} can be reached from other machines. The desk has no accounts yet and listens on this machine only; "
                    + "use http://127.0.0.1, http://[::1] or http://localhost with a port.";
        }

        return null;
    }

    private static bool IsLoopback(string url) =>
        Uri.TryCreate(url, UriKind.Absolute, out var uri)
        && (uri.Host.Equals("localhost", StringComparison.OrdinalIgnoreCase)
            || (IPAddress.TryParse(uri.Host.Trim('[', ']'), out var address) && IPAddress.IsLoopback(address)));
}
