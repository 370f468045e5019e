using System.Globalization;
using ExamDocs.UseCases.Commands;

namespace ExamDocs.Cli;

/// <summary>Asks a question at a terminal: numbered choices, of which Enter takes the one proposed.</summary>
internal sealed class QuestionPrompt(TextReader input, TextWriter output)
{
    private int _asked;

    /// <returns>The choice, counted from 0.</returns>
    /// <exception cref="OperationCanceledException">The input has ended: nobody has accepted anything.</exception>
    public int Ask(AdoptQuestion question)
    {
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"\n{++_asked}. {Shown(question.Text)}"));
        for (var n = 0; n < question.Choices.Count; n++)
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {n + 1, 2}  {Shown(question.Choices[n])}"));
        while (true)
        {
            output.Write(string.Create(CultureInfo.InvariantCulture, $"[{question.Proposed + 1}] "));
            var typed = input.ReadLine()?.Trim() ?? throw new OperationCanceledException();
            if (typed.Length == 0)
                return question.Proposed;
            if (
                int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
                && number >= 1
                && number <= question.Choices.Count
            )
                return number - 1;
            output.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Type a number from 1 to {question.Choices.Count}, or Enter for {question.Proposed + 1}."
                )
            );
        }
    }

    /// <summary>What a list holds could steer the terminal.</summary>
    public static string Shown(string text) => string.Concat(text.Select(c => char.IsControl(c) ? ' ' : c));
}
