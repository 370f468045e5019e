using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace ExamDocs.Workbench.Guards;

/// <summary>The port that the server listens on, known once it has started.</summary>
internal sealed class OwnAddress
{
    public int Port { get; set; }

    public string Host => FormattableString.Invariant($"127.0.0.1:{Port}");

    public string Origin => $"http://{Host}";
}

/// <summary>
/// Answers only what names the server's own address. A page elsewhere that points a name of its own at the loopback address would
/// otherwise be taken for ours.
/// </summary>
internal static class OwnHost
{
    public static Task Require(HttpContext context, RequestDelegate next)
    {
        var own = context.RequestServices.GetRequiredService<OwnAddress>();
        return string.Equals(context.Request.Host.Value, own.Host, StringComparison.Ordinal)
            ? next(context)
            : Refusal.Write(context, StatusCodes.Status421MisdirectedRequest, "This address is not the workbench's.");
    }
}

/// <summary>A refusal in a sentence, as plain text.</summary>
internal static class Refusal
{
    public static Task Write(HttpContext context, int status, string sentence)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync(sentence);
    }
}
