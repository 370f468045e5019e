using System.Text.Json;
using ExamDocs.Core.Records;

namespace ExamDocs.UseCases.Company.Packing;

/// <summary>The contents of a pack as other programs read them.</summary>
internal static class PackFile
{
    public const string FormatName = "examdocs-pack/1";

    public static byte[] Of(GatheredPack pack) =>
        JsonSerializer.SerializeToUtf8Bytes(
            new
            {
                Format = FormatName,
                pack.Contents.Scope,
                Log = pack.Checkpoint is { } log ? new { log.Origin, log.Size, Root = Convert.ToBase64String(log.Root.Span) } : null,
                Gaps = pack.Contents.Gaps.Select(g => new { g.Code, g.About, g.Words }),
                Items = pack.Contents.Items.Select(i => new
                {
                    i.Item.Id,
                    i.Item.Serial,
                    i.Item.OwnersMark,
                    i.Item.Category,
                    i.Item.Description,
                    i.Item.Maker,
                    i.Item.Model,
                    i.Item.PartNumber,
                    Manufactured = i.Item.Manufactured?.ToString(),
                    FirstUsed = i.Item.FirstUsed?.ToString(),
                    Declaration = i.Item.Declaration is { } d ? new { d.Reference, d.On } : null,
                    i.Premises,
                    i.Standing,
                    i.Why,
                    i.IsInService,
                    i.UsableThrough,
                    NextExaminationBy = i.NextBy,
                    i.Documents,
                }),
                Documents = pack.Contents.Documents.Select(d => new
                {
                    d.Number,
                    d.Kind,
                    d.IsCopy,
                    d.Items,
                    d.IssuedOn,
                    d.Pages,
                    d.Sha256,
                    d.File,
                }),
                Evidence = pack.Contents.Evidence.Select(e => new { e.File, e.Kind, e.About, e.Sha256 }),
                pack.Contents.Examiners,
                Retention = pack.Contents.Retention.Select(r => new
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
