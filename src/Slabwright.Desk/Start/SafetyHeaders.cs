namespace Slabwright.Desk.Start;

/// <summary>Tells the browser to load nothing from elsewhere, to run no inline script and to stay out of frames.</summary>
internal static class SafetyHeaders
{
    private const string Policy =
        "default-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    public static void UseSafetyHeaders(this WebApplication app) => app.Use((http, next) =>
    {
        http.Response.Headers.ContentSecurityPolicy = Policy;
        http.Response.Headers.XContentTypeOptions = "nosniff";
        http.Response.Headers["Referrer-Policy"] = "no-referrer";
        return next(http);
    });
}
