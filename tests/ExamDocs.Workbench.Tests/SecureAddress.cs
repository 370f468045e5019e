using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;

namespace ExamDocs.Workbench.Tests;

/// <summary>One file at an https address of this machine, with a certificate that it made itself: all that a firm's own site would do.</summary>
internal sealed class SecureAddress : IAsyncDisposable
{
    private readonly WebApplication _app;

    private SecureAddress(WebApplication app) => _app = app;

    public string Of => $"{_app.Urls.Single()}/visit.html";

    public static async Task<SecureAddress> OfAsync(string html)
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseKestrelHttpsConfiguration();
        builder.WebHost.ConfigureKestrel(k => k.Listen(IPAddress.Loopback, 0, o => o.UseHttps(Certificate())));
        var app = builder.Build();
        app.MapGet("/visit.html", () => Results.File(html, "text/html"));
        await app.StartAsync();
        return new SecureAddress(app);
    }

    public ValueTask DisposeAsync() => _app.DisposeAsync();

    private static X509Certificate2 Certificate()
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest("CN=127.0.0.1", key, HashAlgorithmName.SHA256);
        using var made = request.CreateSelfSigned(DateTimeOffset.UtcNow.AddDays(-1), DateTimeOffset.UtcNow.AddDays(1));
        return X509CertificateLoader.LoadPkcs12(made.Export(X509ContentType.Pfx), null);
    }
}
