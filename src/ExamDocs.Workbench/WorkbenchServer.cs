using System.Net;
using ExamDocs.UseCases.Registered;
using ExamDocs.Workbench.Desk;
using ExamDocs.Workbench.Endpoints;
using ExamDocs.Workbench.Guards;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace ExamDocs.Workbench;

/// <summary>
/// The local web pages: served on the loopback address alone, to the browser that was opened with the one-time key. What the pages do,
/// the use cases do; nothing is decided here.
/// </summary>
public sealed class WorkbenchServer : IAsyncDisposable
{
    private readonly WebApplication _app;

    private WorkbenchServer(WebApplication app, Uri entry) => (_app, Entry) = (app, entry);

    /// <summary>The address to open in a browser; it works once.</summary>
    public Uri Entry { get; }

    /// <exception cref="IOException">The port is taken, or the folder cannot be made.</exception>
    public static async Task<WorkbenchServer> StartAsync(WorkbenchRequest request, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        Directory.CreateDirectory(request.DataFolder);
        var app = Build(request);
        var key = app.Services.GetRequiredService<EntryKey>();
        await app.StartAsync(cancellation);
        var address = new Uri(app.Urls.Single());
        app.Services.GetRequiredService<OwnAddress>().Port = address.Port;
        return new WorkbenchServer(app, new Uri($"http://127.0.0.1:{address.Port}{EntryKey.Path}?key={key.Offered}"));
    }

    /// <summary>Runs until it is cancelled; what is being issued is finished first.</summary>
    public Task WaitAsync(CancellationToken cancellation) => _app.WaitForShutdownAsync(cancellation);

    public ValueTask DisposeAsync() => _app.DisposeAsync();

    private static WebApplication Build(WorkbenchRequest request)
    {
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions { ApplicationName = "ExamDocs.Workbench" });
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        builder
            .WebHost.UseKestrelCore()
            .ConfigureKestrel(kestrel =>
            {
                kestrel.AddServerHeader = false;
                kestrel.Limits.MaxRequestBodySize = request.MostBytes;
                kestrel.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(15);
                kestrel.Limits.MaxConcurrentConnections = 200;
                kestrel.Listen(IPAddress.Loopback, request.Port);
            });
        builder.Services.AddRoutingCore();
        builder.Services.AddRazorComponents();
        // Pages live as long as the program: keys that outlive it would only lie about on the disk.
        builder.Services.AddDataProtection().UseEphemeralDataProtectionProvider();
        builder.Services.AddAntiforgery(options =>
        {
            options.Cookie.Name = EntryKey.NewCookieName("form");
            options.Cookie.SameSite = Microsoft.AspNetCore.Http.SameSiteMode.Strict;
        });
        builder.Services.Configure<FormOptions>(options =>
        {
            options.MultipartBodyLengthLimit = request.MostBytes;
            // A page has eleven fields for each criterion, and a category of the firm's own can have hundreds.
            options.ValueCountLimit = 20_000;
        });
        AddDesk(builder.Services, request);
        var app = builder.Build();
        app.Use(SecurityHeaders.Add);
        app.Use(OwnHost.Require);
        app.Use(EntryKey.Require);
        app.Use(SameSitePosts.Require);
        app.Use(FailuresInWords.Show);
        app.UseRouting();
        MapPages(app);
        return app;
    }

    private static void AddDesk(IServiceCollection services, WorkbenchRequest request)
    {
        services.AddSingleton(request);
        services.AddSingleton<OwnAddress>();
        services.AddSingleton<EntryKey>();
        services.AddSingleton<DeskFolder>();
        services.AddSingleton<CheckedVisits>();
        services.AddSingleton<Drafts>();
        services.AddSingleton<IssueRuns>();
        services.AddSingleton<Who>();
        services.AddSingleton<RecordingDesk>();
        services.AddSingleton<FoundMemory>();
        services.AddSingleton<KeptNotices>();
        services.AddSingleton<RecallRuns>();
        services.AddSingleton<PackRuns>();
    }

    private static void MapPages(WebApplication app)
    {
        AssetEndpoints.Map(app);
        DeskEndpoints.Map(app);
        VisitEndpoints.Map(app);
        ListEndpoints.Map(app);
        RecordEndpoints.Map(app);
        ItemEndpoints.Map(app);
        PhotoEndpoints.Map(app);
        IssueEndpoints.Map(app);
        LookupEndpoints.Map(app);
        VerifyEndpoints.Map(app);
        LessonsEndpoints.Map(app);
        RecallEndpoints.Map(app);
        WhoEndpoints.Map(app);
        DueEndpoints.Map(app);
        SparesEndpoints.Map(app);
        PackEndpoints.Map(app);
    }
}
