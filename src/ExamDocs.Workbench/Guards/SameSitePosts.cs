using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.Extensions.DependencyInjection;

namespace ExamDocs.Workbench.Guards;

/// <summary>
/// Whatever changes something must come from a page of ours: the browser says so, by Sec-Fetch-Site or Origin, and the form carries a
/// token that only our pages have.
/// </summary>
internal static class SameSitePosts
{
    public static async Task Require(HttpContext context, RequestDelegate next)
    {
        if (HttpMethods.IsGet(context.Request.Method) || HttpMethods.IsHead(context.Request.Method))
        {
            await next(context);
            return;
        }
        var own = context.RequestServices.GetRequiredService<OwnAddress>();
        if (!HttpMethods.IsPost(context.Request.Method) || !IsFromOurPage(context.Request, own))
        {
            await Refusal.Write(context, StatusCodes.Status403Forbidden, "This did not come from a page of the workbench.");
            return;
        }
        if (context.Request.ContentLength > context.Features.Get<IHttpMaxRequestBodySizeFeature>()?.MaxRequestBodySize)
        {
            await Refusal.Write(context, StatusCodes.Status413PayloadTooLarge, "That is too large. Bring it in in parts.");
            return;
        }
        try
        {
            await context.RequestServices.GetRequiredService<IAntiforgery>().ValidateRequestAsync(context);
        }
        catch (AntiforgeryValidationException e) when (e.InnerException is not (IOException or InvalidDataException))
        {
            await Refusal.Write(
                context,
                StatusCodes.Status403Forbidden,
                "This page is out of date. Load it again and repeat what you did."
            );
            return;
        }
        catch (Exception e) when (e is AntiforgeryValidationException or BadHttpRequestException or InvalidDataException)
        {
            await Refusal.Write(context, StatusCodes.Status400BadRequest, "What was sent cannot be read, or is too large.");
            return;
        }
        await next(context);
    }

    private static bool IsFromOurPage(HttpRequest request, OwnAddress own)
    {
        var (site, origin) = (request.Headers["Sec-Fetch-Site"].ToString(), request.Headers.Origin.ToString());
        if (origin.Length > 0 && !string.Equals(origin, own.Origin, StringComparison.Ordinal))
            return false;
        return site.Length > 0 ? string.Equals(site, "same-origin", StringComparison.Ordinal) : origin.Length > 0;
    }
}
