using System.Collections.Concurrent;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text;

namespace ExamDocs.Documents.Tests.Browsing;

/// <summary>A listener that notes every connection and what is asked of it, and answers nothing of use.</summary>
internal sealed class Canaries : IAsyncDisposable
{
    private readonly TcpListener _listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource _end = new();
    private readonly ConcurrentQueue<string> _heard = new();
    private readonly Task _listening;

    public Canaries()
    {
        _listener.Start();
        _listening = ListenAsync();
    }

    public int Port => ((IPEndPoint)_listener.LocalEndpoint).Port;

    /// <summary>The first line of every request; a connection without one counts as "connected".</summary>
    public IReadOnlyCollection<string> Heard => _heard;

    public async Task<int> CountAfter(TimeSpan wait)
    {
        await Task.Delay(wait, TestContext.Current.CancellationToken);
        return _heard.Count;
    }

    public async ValueTask DisposeAsync()
    {
        await _end.CancelAsync();
        _listener.Stop();
        await _listening;
        _end.Dispose();
    }

    private async Task ListenAsync()
    {
        try
        {
            while (true)
            {
                var client = await _listener.AcceptTcpClientAsync(_end.Token);
                _ = AnswerAsync(client);
            }
        }
        catch (Exception e) when (e is OperationCanceledException or SocketException or ObjectDisposedException)
        {
            // The test is over.
        }
    }

    private async Task AnswerAsync(TcpClient client)
    {
        using (client)
        {
            var buffer = new byte[4096];
            var read = 0;
            try
            {
                using var patience = CancellationTokenSource.CreateLinkedTokenSource(_end.Token);
                patience.CancelAfter(500);
                read = await client.GetStream().ReadAsync(buffer, patience.Token);
            }
            catch (Exception e) when (e is OperationCanceledException or IOException)
            {
                // Connected, and asked nothing: that is noted as well.
            }
            _heard.Enqueue(read == 0 ? "connected" : Encoding.Latin1.GetString(buffer, 0, read).Split('\r')[0]);
        }
    }

    /// <summary>Everything a page can do to reach a network, a name or a file, each under a path of its own.</summary>
    /// <param name="at">Where it is sent to, without a slash.</param>
    /// <param name="file">A file of this computer, with a slash.</param>
    public static string Page(string at, string file) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $$"""
            <!DOCTYPE html><html lang="en"><head><title>t</title>
            <link rel="stylesheet" href="{{at}}/stylesheet"><link rel="preload" as="image" href="{{at}}/preload">
            <link rel="modulepreload" href="{{at}}/modulepreload">
            <link rel="prefetch" href="{{at}}/prefetch"><link rel="preconnect" href="{{at}}"><link rel="dns-prefetch" href="{{at}}">
            <link rel="icon" href="{{at}}/icon"><link rel="manifest" href="{{at}}/manifest">
            <script src="{{at}}/script"></script><script type="module">import "{{at}}/module";</script>
            <script type="speculationrules">{"prefetch":[{"source":"list","urls":["{{at}}/speculation"]}]}</script>
            <style>@import url("{{at}}/import"); @font-face { font-family: x; src: url("{{at}}/font") }
            b { font-family: x }
            p { background: url("{{at}}/background"); list-style-image: url("{{at}}/list"); cursor: url("{{at}}/cursor"), auto; }
            i::after { content: url("{{at}}/content"); } u { mask-image: url("{{at}}/mask"); border-image: url("{{at}}/border"); }
            @page { @top-left { content: url("{{at}}/margin"); } }</style></head>
            <body><p>still printed</p><b>b</b><i>i</i><u>u</u>
            <img src="{{at}}/img"><img srcset="{{at}}/srcset 1x"><picture><source srcset="{{at}}/source"><img></picture>
            <img loading="lazy" src="{{at}}/lazy">
            <iframe src="{{at}}/iframe"></iframe><iframe srcdoc="<img src='{{at}}/srcdoc'>"></iframe>
            <object data="{{at}}/object"></object><embed src="{{at}}/embed">
            <video src="{{at}}/video" poster="{{at}}/poster" autoplay></video><audio src="{{at}}/audio" autoplay preload="auto"></audio>
            <video><track default src="{{at}}/track"></video>
            <form action="{{at}}/form"><input type="image" src="{{at}}/input"></form><a href="{{at}}/a" ping="{{at}}/ping">a</a>
            <svg><image href="{{at}}/svg-image"/><use href="{{at}}/svg-use#x"/>
            <filter id="f"><feImage href="{{at}}/svg-feimage"/></filter><rect width="9" height="9" filter="url(#f)"/></svg>
            <iframe src="file://{{file}}"></iframe><object data="file://{{file}}"></object><embed src="file://{{file}}">
            <img src="file://{{file}}"><link rel="stylesheet" href="file://{{file}}">
            <script>
              fetch("{{at}}/fetch"); new WebSocket("{{WebSocket(at)}}/websocket"); new EventSource("{{at}}/eventsource");
              navigator.sendBeacon("{{at}}/beacon", "x");
              const q = new XMLHttpRequest(); q.open("GET", "{{at}}/xhr"); q.send(); new Image().src = "{{at}}/image";
              try { new Worker("{{at}}/worker"); } catch {} document.querySelector("form").submit();
            </script></body></html>
            """
        );

    private static string WebSocket(string at) => at.Replace("http", "ws", StringComparison.Ordinal);
}
