using ExamDocs.Templates.AuditPack;
using ExamDocs.Templates.AuthorityCopy;
using ExamDocs.Templates.Certificate;
using ExamDocs.Templates.CheckSheet;
using ExamDocs.Templates.DueLabel;
using ExamDocs.Templates.DuePlan;
using ExamDocs.Templates.Enclosures;
using ExamDocs.Templates.EquipmentRecord;
using ExamDocs.Templates.Evidence;
using ExamDocs.Templates.FirstVisit;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Lessons;
using ExamDocs.Templates.Notice;
using ExamDocs.Templates.Report;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;

namespace ExamDocs.Documents.Rendering;

/// <summary>Turns models into HTML. The same model always gives the same HTML.</summary>
public sealed class DocumentRenderer : IAsyncDisposable
{
    private readonly ServiceProvider _services = new ServiceCollection().BuildServiceProvider();

    public Task<string> HtmlAsync(ReportModel model) => RenderAsync(ReportDocument.Of(model));

    public Task<string> HtmlAsync(AuthorityCopyModel model) => RenderAsync(AuthorityCopyDocument.Of(model));

    public Task<string> HtmlAsync(NoticeModel model) => RenderAsync(NoticeDocument.Of(model));

    public Task<string> HtmlAsync(CertificateModel model) => RenderAsync(CertificateDocument.Of(model));

    public Task<string> HtmlAsync(LabelModel model) => RenderAsync(LabelDocument.Of(model));

    public Task<string> HtmlAsync(DueLabelModel model) => RenderAsync(DueLabelDocument.Of(model));

    public Task<string> HtmlAsync(HandTagModel model) => RenderAsync(HandTagDocument.Of(model));

    public Task<string> HtmlAsync(DueFaceModel model) => RenderAsync(DueFaceDocument.Of(model));

    public Task<string> HtmlAsync(EquipmentRecordModel model) => RenderAsync(EquipmentRecordDocument.Of(model));

    public Task<string> HtmlAsync(CheckSheetModel model) => RenderAsync(CheckSheetDocument.Of(model));

    public Task<string> HtmlAsync(EnclosuresModel model) => RenderAsync(EnclosuresPage.Of(model));

    public Task<string> HtmlAsync(FirstVisitModel model) => RenderAsync(FirstVisitDocument.Of(model));

    public Task<string> HtmlAsync(LessonsModel model) => RenderAsync(LessonsDocument.Of(model));

    /// <summary>Pages of an audit pack's reading copy that come before the documents.</summary>
    public Task<string> FrontAsync(PackModel model, PackStretch stretch) => RenderAsync(PackFront.Of(model, stretch));

    /// <summary>Pages of an audit pack's reading copy that come behind the documents.</summary>
    public Task<string> BackAsync(PackModel model, PackStretch stretch) => RenderAsync(PackBack.Of(model, stretch));

    /// <summary>The index of an audit pack for a browser.</summary>
    public Task<string> HtmlAsync(PackModel model) => RenderAsync(PackIndexPage.Of(model));

    public Task<string> HtmlAsync(DuePlanModel model) => RenderAsync(DuePlanDocument.Of(model));

    public Task<string> HtmlAsync(DueLetterModel model) => RenderAsync(DueLetterDocument.Of(model));

    public Task<string> HtmlAsync(EvidenceModel model) => RenderAsync(EvidenceDocument.Of(model));

    public ValueTask DisposeAsync() => _services.DisposeAsync();

    // A renderer keeps everything it ever rendered alive, so each document gets its own.
    private async Task<string> RenderAsync(RenderFragment fragment)
    {
        await using var renderer = new HtmlRenderer(_services, NullLoggerFactory.Instance);
        return await renderer.Dispatcher.InvokeAsync(async () =>
        {
            var parameters = ParameterView.FromDictionary(
                new Dictionary<string, object?>(StringComparer.Ordinal) { [nameof(Fragment.Content)] = fragment }
            );
            var root = await renderer.RenderComponentAsync<Fragment>(parameters);
            return root.ToHtmlString();
        });
    }

    private sealed class Fragment : ComponentBase
    {
        [Parameter]
        public RenderFragment? Content { get; set; }

        protected override void BuildRenderTree(Microsoft.AspNetCore.Components.Rendering.RenderTreeBuilder builder) =>
            builder.AddContent(0, Content);
    }
}
