using System.Text;
using System.Text.Json;
using ExamDocs.Core.Records;

namespace ExamDocs.UseCases.Company.Packing;

/// <summary>Proofs that documents are in the register's log, and a program by which anybody can check them.</summary>
internal static class PackProofs
{
    public const string FormatName = "examdocs-inclusion-proofs/1";

    /// <summary>RFC 9162, 2.1.3.2, in Python without any library of its own.</summary>
    public const string Program = """
        import base64, hashlib, json, os

        def sha256(data):
            return hashlib.sha256(data).digest()

        body = json.load(open("data/log/checkpoint.json", encoding="utf-8"))["body"].split("\n")
        proved = set()
        size, root = int(body[1]), base64.b64decode(body[2])
        for proof in json.load(open("data/log/inclusion-proofs.json", encoding="utf-8"))["proofs"]:
            entry = proof["entry"].encode("utf-8")
            at, last, found = proof["position"], size - 1, sha256(b"\x00" + entry)
            for step in map(bytes.fromhex, proof["path"]):
                if at % 2 == 1 or at == last:
                    found = sha256(b"\x01" + step + found)
                    while at % 2 == 0 and at > 0:
                        at, last = at // 2, last // 2
                else:
                    found = sha256(b"\x01" + found + step)
                at, last = at // 2, last // 2
            pdf = open("data/documents/" + proof["number"] + ".pdf", "rb").read()
            said = json.loads(proof["entry"])
            good = last == 0 and found == root and said["number"] == proof["number"] and said["sha256"] == sha256(pdf).hex()
            print(proof["number"], "ok" if good else "WRONG")
            proved.add("data/documents/" + proof["number"] + ".pdf")
        listed = {line.rstrip("\n")[66:] for line in open("manifest-sha256.txt", encoding="utf-8")}
        for folder, _, names in sorted(os.walk("data")):
            for path in sorted(os.path.join(folder, name).replace(os.sep, "/") for name in names):
                if path not in listed:
                    print(path, "IS IN NO LIST")
                elif folder == os.path.join("data", "documents") and path not in proved:
                    print(path, "IS NOT PROVED")

        """;

    public static byte[] Of(GatheredPack pack) =>
        JsonSerializer.SerializeToUtf8Bytes(
            new
            {
                Format = FormatName,
                Proofs = pack.Proofs.Select(p => new
                {
                    p.Number,
                    p.Position,
                    Entry = Encoding.UTF8.GetString(p.Entry.Span),
                    Path = p.Path.Select(Convert.ToHexStringLower),
                }),
            },
            RuleJson.Options
        );
}
