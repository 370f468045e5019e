using ExamDocs.UseCases.Issuing;
using ExamDocs.Workbench.Desk;
using ExamDocs.Workbench.Endpoints;
using ExamDocs.Workbench.Pages;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace ExamDocs.Workbench.Guards;

/// <summary>A failure of disk, browser or register becomes a page that says it in a sentence.</summary>
internal static class FailuresInWords
{
    public static async Task Show(HttpContext context, RequestDelegate next)
    {
        try
        {
            await next(context);
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            // Nobody waits for an answer any more.
        }
        catch (Exception e) when (!context.Response.HasStarted)
        {
            await Console.Error.WriteLineAsync(e.ToString());
            var words = WorkbenchWords.In(context.RequestServices.GetRequiredService<Who>().Now.Language);
            var sentence = RunFailure.Is(e) ? RunFailure.Sentence(e) : words.ProgramFault;
            await Answer
                .Page<MessagePage>(new MessageModel(words.Failed, sentence, "/", words), StatusCodes.Status500InternalServerError)
                .ExecuteAsync(context);
        }
    }
}
