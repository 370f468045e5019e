using System.Text.Json;
using ExamDocs.Core.Records;
using ExamDocs.Templates.AuditPack;

namespace ExamDocs.UseCases.Company.Packing;

/// <summary>The contents of a pack as other programs read them.</summary>
internal static class PackFile
{
    public const string FormatName = "examdocs-pack/1";

    public static byte[] Of(GatheredPack pack)
    {
        var all = pack.Contents;
        return JsonSerializer.SerializeToUtf8Bytes(
            new
            {
                Format = FormatName,
                all.Scope,
                Log = pack.Checkpoint is { } log
                    ? new
                    {
                        log.Origin,
                        log.Size,
                        Root = Convert.ToBase64String(log.Root.Span),
                    }
                    : null,
                Gaps = all.Gaps.Select(g => new
                {
                    g.Code,
                    g.About,
                    g.Words,
                }),
                Items = all.Items.Select(Item),
                Documents = all.Documents.Select(Document),
                Evidence = all.Evidence.Select(e => new
                {
                    e.File,
                    e.Kind,
                    e.About,
                    e.Sha256,
                }),
                all.Examiners,
                Retention = all.Retention.Select(r => new
                {
                    r.Reference,
                    r.ReportedOn,
                    r.Until,
                    Rules = r.Rules.Select(k => new { k.Words, k.Source }),
                }),
            },
            RuleJson.Options
        );
    }

    private static object Item(PackItem packed)
    {
        var item = packed.Item;
        return new
        {
            item.Id,
            item.Serial,
            item.OwnersMark,
            item.Category,
            item.Description,
            item.Maker,
            item.Model,
            item.PartNumber,
            Manufactured = item.Manufactured?.ToString(),
            FirstUsed = item.FirstUsed?.ToString(),
            Declaration = item.Declaration is { } d ? new { d.Reference, d.On } : null,
            packed.Premises,
            packed.Standing,
            packed.Why,
            packed.IsInService,
            packed.UsableThrough,
            NextExaminationBy = packed.NextBy,
            packed.Documents,
        };
    }

    private static object Document(PackDocument document) =>
        new
        {
            document.Number,
            document.Kind,
            document.IsCopy,
            document.Items,
            document.IssuedOn,
            document.Pages,
            document.Sha256,
            document.File,
        };
}
