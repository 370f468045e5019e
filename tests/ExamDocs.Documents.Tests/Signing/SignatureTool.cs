using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;

namespace ExamDocs.Documents.Tests.Signing;

/// <summary>Other people's programs that check signatures.</summary>
internal static class SignatureTool
{
    /// <summary>What poppler says, trusting a root where the tool is there that keeps its store (certutil of NSS).</summary>
    public static string PdfSig(byte[] pdf, string rootPem) =>
        InFolder(folder =>
        {
            File.WriteAllBytes(Path.Combine(folder, "a.pdf"), pdf);
            File.WriteAllText(Path.Combine(folder, "root.pem"), rootPem);
            if (HasTrustStore)
            {
                Run(folder, "certutil", "-N", "-d", "sql:" + folder, "--empty-password");
                Run(folder, "certutil", "-A", "-d", "sql:" + folder, "-n", "root", "-t", "C,C,C", "-i", "root.pem", "-a");
            }
            return Run(folder, "pdfsig", "-nssdir", "sql:" + folder, "a.pdf");
        });

    public static bool HasTrustStore { get; } = File.Exists("/usr/bin/certutil");

    /// <summary>What OpenSSL says of the signature, cut out of the file, over the bytes that it is about.</summary>
    public static string OpenSsl(byte[] pdf, string rootPem, string time) =>
        InFolder(folder =>
        {
            var (signed, cms) = Parts(pdf);
            File.WriteAllBytes(Path.Combine(folder, "signed"), signed);
            File.WriteAllBytes(Path.Combine(folder, "cms"), cms);
            File.WriteAllText(Path.Combine(folder, "root.pem"), rootPem);
            return Run(
                folder,
                "openssl",
                "cms",
                "-verify",
                "-cades",
                "-binary",
                "-inform",
                "DER",
                "-in",
                "cms",
                "-content",
                "signed",
                "-CAfile",
                "root.pem",
                "-purpose",
                "any",
                "-attime",
                time,
                "-out",
                "/dev/null"
            );
        });

    /// <summary>The bytes that a file says are signed, and the signature; read without any code of ours.</summary>
    public static (byte[] Signed, byte[] Cms) Parts(byte[] pdf)
    {
        var text = Encoding.Latin1.GetString(pdf);
        var range = Regex
            .Match(text, @"/ByteRange \[0 (\d+) (\d+) (\d+) *\]", RegexOptions.None, TimeSpan.FromSeconds(5))
            .Groups.Values.Skip(1)
            .Select(g => int.Parse(g.Value))
            .ToArray();
        var cms = Convert.FromHexString(text[(range[0] + 1)..(range[1] - 1)]);
        return ([.. pdf[..range[0]], .. pdf.AsSpan(range[1], range[2])], cms);
    }

    /// <summary>Runs a program; its output and errors together, whatever it ends with.</summary>
    public static string Run(string folder, string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return output + errors.Result;
    }

    public static T InFolder<T>(Func<string, T> work)
    {
        var folder = Directory.CreateTempSubdirectory("signed-").FullName;
        try
        {
            return work(folder);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
