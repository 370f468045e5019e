using System.IO.Compression;
using System.Net;
using System.Net.Http.Headers;
using System.Net.Sockets;
using System.Text;
using System.Text.RegularExpressions;

namespace ExamDocs.Workbench.Tests;

/// <summary>Who is let in, and what is refused without anything being written.</summary>
public sealed partial class GuardTests : IAsyncLifetime
{
    private OpenedWorkbench _open = null!;

    public async ValueTask InitializeAsync() => _open = await OpenedWorkbench.StartAsync(mostBytes: 1_000_000);

    public async ValueTask DisposeAsync() => await _open.DisposeAsync();

    [Theory]
    [InlineData("localhost")]
    [InlineData("127.0.0.1")]
    [InlineData("kit.example")]
    [InlineData("127.0.0.1.kit.example")]
    public async Task Another_host_name_is_refused(string host)
    {
        using var client = await _open.EnterAsync();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/");
        request.Headers.Host = host;
        using var answer = await client.SendAsync(request, Ct);
        Assert.Equal(HttpStatusCode.MisdirectedRequest, answer.StatusCode);
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/find?q=RB-1")]
    [InlineData("/assets/workbench.css")]
    [InlineData("/visit/0123456789abcdef")]
    public async Task Nobody_gets_a_page_without_the_key(string path)
    {
        using var client = _open.Stranger();
        using var answer = await client.GetAsync(path, Ct);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.DoesNotContain("<html", await answer.Content.ReadAsStringAsync(Ct), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task The_key_works_once()
    {
        using var first = await _open.EnterAsync();
        using var second = _open.Stranger();
        using var replayed = await second.GetAsync(_open.Entry, Ct);
        Assert.Equal(HttpStatusCode.Forbidden, replayed.StatusCode);
        using var page = await second.GetAsync("/", Ct);
        Assert.Equal(HttpStatusCode.Forbidden, page.StatusCode);
        using var kept = await first.GetAsync("/find", Ct);
        Assert.Equal(HttpStatusCode.OK, kept.StatusCode);
    }

    [Theory]
    [InlineData("?key=")]
    [InlineData("?key=AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")]
    [InlineData("")]
    public async Task A_wrong_key_opens_nothing_and_spoils_nothing(string query)
    {
        using var client = _open.Stranger();
        using var wrong = await client.GetAsync("/enter" + query, Ct);
        Assert.Equal(HttpStatusCode.Forbidden, wrong.StatusCode);
        using var right = await client.GetAsync(_open.Entry, Ct);
        Assert.Equal(HttpStatusCode.Redirect, right.StatusCode);
    }

    [Theory]
    [InlineData("cross-site", null)]
    [InlineData("same-site", null)]
    [InlineData("none", null)]
    [InlineData(null, "http://kit.example")]
    [InlineData(null, "null")]
    [InlineData(null, null)]
    [InlineData("same-origin", "http://kit.example")]
    public async Task A_post_from_elsewhere_is_refused(string? site, string? origin)
    {
        using var client = await _open.EnterAsync();
        using var answer = await PostAsync(client, site, origin, await TokenAsync(client));
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.DoesNotContain(_open.Files, f => f.Contains("desk", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("CfDJ8AAAA")]
    public async Task A_post_without_our_token_is_refused(string? token)
    {
        using var client = await _open.EnterAsync();
        using var answer = await PostAsync(client, "same-origin", null, token);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.DoesNotContain(_open.Files, f => f.Contains("desk", StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_same_post_from_our_page_is_taken()
    {
        using var client = await _open.EnterAsync();
        using var answer = await PostAsync(client, "same-origin", _open.Address, await TokenAsync(client));
        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        Assert.Single(_open.Files, f => f.EndsWith("visit.json", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(false, HttpStatusCode.RequestEntityTooLarge)]
    [InlineData(true, HttpStatusCode.BadRequest)]
    public async Task What_is_too_large_is_refused_and_leaves_nothing(bool isOfUnknownLength, HttpStatusCode expected)
    {
        using var client = await _open.EnterAsync();
        using var answer = await PostAsync(
            client,
            "same-origin",
            null,
            await TokenAsync(client),
            new byte[1_500_000],
            isChunked: isOfUnknownLength
        );
        Assert.Equal(expected, answer.StatusCode);
        Assert.Contains("too large", await answer.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
        Assert.DoesNotContain(_open.Files, f => f.Contains("desk", StringComparison.Ordinal));
        using var still = await client.GetAsync("/find", Ct);
        Assert.Equal(HttpStatusCode.OK, still.StatusCode);
    }

    [Theory]
    [InlineData("../../visit.json")]
    [InlineData("..\\..\\visit.json")]
    [InlineData("/etc/visit.json")]
    [InlineData("C:\\visit.json")]
    [InlineData("CON.json")]
    [InlineData(".json")]
    [InlineData("a\u202Enosj.json")]
    public async Task A_name_that_is_a_path_stays_in_its_folder(string name)
    {
        using var client = await _open.EnterAsync();
        using var answer = await PostAsync(client, "same-origin", null, await TokenAsync(client), name: name);
        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        var file = Assert.Single(_open.Files, f => f.EndsWith(".json", StringComparison.Ordinal));
        Assert.Equal("round-1", Path.GetFileName(Path.GetDirectoryName(file)));
        Assert.StartsWith(_open.Desk, file, StringComparison.Ordinal);
        Assert.DoesNotContain('\u202E', file);
        Assert.NotEqual("CON", Path.GetFileNameWithoutExtension(file));
    }

    [Fact]
    public async Task A_name_longer_than_file_systems_take_is_cut()
    {
        using var client = await _open.EnterAsync();
        var name = string.Concat(Enumerable.Repeat("検", 120)) + ".json";
        using var answer = await PostAsync(client, "same-origin", null, await TokenAsync(client), name: name);
        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        Assert.Single(_open.Files, f => f.EndsWith("検.json", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("../visit.json", "not as the form for the yard saves it")]
    [InlineData("photos/a.svg", "not as the form for the yard saves it")]
    [InlineData(null, "no archive")]
    public async Task An_archive_that_the_form_did_not_save_leaves_nothing(string? within, string why)
    {
        using var client = await _open.EnterAsync();
        await File.WriteAllTextAsync(Path.Combine(Path.GetDirectoryName(_open.Desk)!, "who.json"), "{}", Ct);
        using var archive = new MemoryStream();
        if (within is not null)
        {
            await using var zip = new ZipArchive(archive, ZipArchiveMode.Create, leaveOpen: true);
            (await zip.CreateEntry(within).OpenAsync(Ct)).Dispose();
        }
        using var answer = await PostAsync(client, "same-origin", null, await TokenAsync(client), [.. archive.ToArray(), 0], "visit.zip");
        Assert.Contains(why, await answer.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
        Assert.DoesNotContain(_open.Files, f => f.Contains("desk", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_page_of_hundreds_of_criteria_is_taken()
    {
        using var client = await _open.EnterAsync();
        var fields = Enumerable.Range(0, 5000).Select(n => KeyValuePair.Create($"answer/of-our-own-{n}", "clear"));
        using var request = new HttpRequestMessage(HttpMethod.Post, "/visit/0123456789abcdef/item/0")
        {
            Content = new FormUrlEncodedContent(fields.Append(new("__RequestVerificationToken", await TokenAsync(client)))),
        };
        request.Headers.Add("Sec-Fetch-Site", "same-origin");
        using var answer = await client.SendAsync(request, Ct);
        // There is no such visit; what was sent is read.
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Theory]
    [InlineData("[::1]:PORT")]
    [InlineData("127.1:PORT")]
    [InlineData("0177.0.0.1:PORT")]
    [InlineData("2130706433:PORT")]
    [InlineData("127.0.0.1.:PORT")]
    [InlineData("LOCALHOST:PORT")]
    [InlineData("127.0.0.1:0PORT")]
    [InlineData("127.0.0.1:PORT@kit.example")]
    [InlineData("")]
    public async Task No_other_spelling_of_the_host_is_taken(string host)
    {
        using var tcp = new TcpClient();
        await tcp.ConnectAsync(IPAddress.Loopback, new Uri(_open.Address).Port, Ct);
        await using var stream = tcp.GetStream();
        var spelt = host.Replace("PORT", $"{new Uri(_open.Address).Port}", StringComparison.Ordinal);
        await stream.WriteAsync(Encoding.ASCII.GetBytes($"GET / HTTP/1.1\r\nHost: {spelt}\r\nConnection: close\r\n\r\n"), Ct);
        using var reader = new StreamReader(stream);
        Assert.Matches("^HTTP/1.1 4(21|00) ", await reader.ReadLineAsync(Ct));
    }

    [Fact]
    public async Task Two_workbenches_open_in_one_browser_do_not_shut_each_other_out()
    {
        await using var other = await OpenedWorkbench.StartAsync();
        // Cookies know no ports: a browser sends each workbench those of both.
        using var browser = new HttpClient(new HttpClientHandler { AllowAutoRedirect = false }) { BaseAddress = new Uri(_open.Address) };
        (await browser.GetAsync(_open.Entry, Ct)).Dispose();
        var token = await TokenAsync(browser);
        (await browser.GetAsync(other.Entry, Ct)).Dispose();
        Assert.Contains(
            "__RequestVerificationToken",
            await browser.GetStringAsync(other.Address + "/verify", Ct),
            StringComparison.Ordinal
        );
        using var saved = await PostAsync(browser, "same-origin", null, token);
        Assert.Equal(HttpStatusCode.SeeOther, saved.StatusCode);
    }

    [Fact]
    public async Task Cookies_are_kept_from_scripts_and_other_sites_and_do_not_pile_up()
    {
        using var client = _open.Stranger();
        for (var n = 0; n < 60; n++)
            client.DefaultRequestHeaders.Add("Cookie", $"examdocs-desk-{n}=x");
        using var entered = await client.GetAsync(_open.Entry, Ct);
        var set = entered.Headers.GetValues("Set-Cookie").ToList();
        Assert.Equal(20, set.Count(c => c.Contains("expires=Thu, 01 Jan 1970", StringComparison.OrdinalIgnoreCase)));
        var ours = set.FindAll(c => !c.Contains("expires", StringComparison.OrdinalIgnoreCase));
        Assert.All(ours, c => Assert.Contains("samesite=strict; httponly", c, StringComparison.OrdinalIgnoreCase));
        Assert.Single(ours);
    }

    [Theory]
    [InlineData("/visit/..%2F..%2Fwho.json")]
    [InlineData("/visit/0123456789abcdef/document/..%2F..%2Fround-1%2Fvisit.json")]
    [InlineData("/assets/..%2Fappsettings.json")]
    [InlineData("/visit/ABCDEF/document/R-2026-000001.pdf")]
    public async Task No_address_leads_out_of_its_folder(string path)
    {
        using var client = await _open.EnterAsync();
        using var answer = await client.GetAsync(path, Ct);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Fact]
    public async Task Fifty_uploads_at_once_each_arrive_whole()
    {
        using var client = await _open.EnterAsync();
        var token = await TokenAsync(client);
        var answers = await Task.WhenAll(
            Enumerable.Range(0, 50).Select(n => PostAsync(client, "same-origin", null, token, "{}"u8.ToArray(), $"visit-{n}.json"))
        );
        Assert.All(answers, a => Assert.Equal(HttpStatusCode.SeeOther, a.StatusCode));
        Assert.Equal(50, answers.Select(a => a.Headers.Location).Distinct().Count());
        Assert.Equal(50, _open.Files.Count(f => f.Contains("visit-", StringComparison.Ordinal)));
        foreach (var answer in answers)
            answer.Dispose();
    }

    [Fact]
    public async Task Pages_forbid_scripts_of_their_own_and_anything_from_elsewhere()
    {
        using var client = await _open.EnterAsync();
        using var answer = await client.GetAsync("/find?q=%3Cscript%3Ealert(1)%3C/script%3E", Ct);
        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("script-src 'self'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("<script>alert", await answer.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
    }

    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    internal static async Task<string> TokenAsync(HttpClient client)
    {
        var page = await client.GetStringAsync("/verify", Ct);
        return Token().Match(page).Groups["token"].Value is { Length: > 0 } token ? token : throw new InvalidDataException(page);
    }

    internal static async Task<HttpResponseMessage> PostAsync(
        HttpClient client,
        string? site,
        string? origin,
        string? token,
        byte[]? content = null,
        string name = "visit.json",
        bool isChunked = false,
        string path = "/bring-in"
    )
    {
        using var form = new MultipartFormDataContent();
        if (token is not null)
            form.Add(new StringContent(token), "__RequestVerificationToken");
        var file = new ByteArrayContent(content ?? "{}"u8.ToArray());
        file.Headers.ContentDisposition = new ContentDispositionHeaderValue("form-data") { Name = "\"files\"", FileNameStar = name };
        form.Add(file);
        using var request = new HttpRequestMessage(HttpMethod.Post, path) { Content = form };
        // Who asks before sending is told before sending that it is too much.
        request.Headers.ExpectContinue = true;
        request.Headers.TransferEncodingChunked = isChunked;
        if (site is not null)
            request.Headers.Add("Sec-Fetch-Site", site);
        if (origin is not null)
            request.Headers.Add("Origin", origin);
        return await client.SendAsync(request, Ct);
    }

    [GeneratedRegex("name=\"__RequestVerificationToken\" value=\"(?<token>[^\"]+)\"", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Token();
}
