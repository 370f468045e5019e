using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace ExamDocs.Workbench.Guards;

/// <summary>
/// Lets one browser in: the address that the program opens carries a key that works once and is exchanged for a cookie. Another user or
/// program of the same machine that finds the port gets nothing.
/// </summary>
internal sealed class EntryKey
{
    public const string Path = "/enter";
    private const string CookiePrefix = "examdocs-";
    private const int Bytes = 32;

    /// <summary>Cookies of earlier starts that may stay: a browser must not come to send more than a server reads.</summary>
    private const int MostCookies = 40;

    private readonly string _cookie = NewCookieName("desk");

    private readonly string _session = New();
    private string? _offered = New();

    /// <summary>The key of the address to open.</summary>
    /// <exception cref="InvalidOperationException">It was used already.</exception>
    public string Offered => _offered ?? throw new InvalidOperationException("The key was used.");

    /// <summary>Cookies know no ports: with one name for all, of two workbenches in one browser only the later would open.</summary>
    public static string NewCookieName(string of) => $"{CookiePrefix}{of}-{New()[..8]}";

    public static Task Require(HttpContext context, RequestDelegate next)
    {
        var key = context.RequestServices.GetRequiredService<EntryKey>();
        if (context.Request.Path == Path)
            return key.Enter(context);
        return Same(context.Request.Cookies[key._cookie], key._session)
            ? next(context)
            : Refusal.Write(
                context,
                StatusCodes.Status403Forbidden,
                "This page belongs to the workbench that was opened from the program. Open it from there again."
            );
    }

    private Task Enter(HttpContext context)
    {
        var offered = _offered;
        if (
            !HttpMethods.IsGet(context.Request.Method)
            || offered is null
            || !Same(context.Request.Query["key"], offered)
            || !ReferenceEquals(Interlocked.CompareExchange(ref _offered, null, offered), offered)
        )
        {
            return Refusal.Write(
                context,
                StatusCodes.Status403Forbidden,
                "This address was used already, or is not the one that the program opened. Open the workbench from the program again."
            );
        }
        var left = context.Request.Cookies.Keys.Where(c => c.StartsWith(CookiePrefix, StringComparison.Ordinal));
        foreach (var old in left.SkipLast(MostCookies))
            context.Response.Cookies.Delete(old);
        context.Response.Cookies.Append(_cookie, _session, new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Strict });
        context.Response.Redirect("/");
        return Task.CompletedTask;
    }

    /// <summary>In the same time wherever they differ.</summary>
    private static bool Same(string? given, string wanted) =>
        given is not null && CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(given), Encoding.UTF8.GetBytes(wanted));

    private static string New() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(Bytes));
}
