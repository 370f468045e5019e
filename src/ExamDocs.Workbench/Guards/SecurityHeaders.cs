using Microsoft.AspNetCore.Http;

namespace ExamDocs.Workbench.Guards;

/// <summary>Nothing is loaded from elsewhere, no script stands in a page, nobody frames us, nothing is kept in a cache.</summary>
internal static class SecurityHeaders
{
    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; "
        + "frame-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'self'";

    public static Task Add(HttpContext context, RequestDelegate next)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers.CacheControl = "no-store";
        return next(context);
    }
}
