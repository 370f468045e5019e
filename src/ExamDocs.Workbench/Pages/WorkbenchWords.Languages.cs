using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Registered;

namespace ExamDocs.Workbench.Pages;

/// <content>The languages there are.</content>
public abstract partial class WorkbenchWords
{
    private static readonly WorkbenchWords[] All = [new English()];

    /// <summary>The words of this language; English where there are none.</summary>
    public static WorkbenchWords In(string tag) => All.FirstOrDefault(w => string.Equals(w.Tag, tag, StringComparison.Ordinal)) ?? All[0];

    /// <summary>What to say where the register is not there; null where it is.</summary>
    public string? Missing(RegisterPlace register) => register.Exists ? null : Say(register.Missing);

    /// <summary>A message of the program in this language.</summary>
    public string Say(Message message)
    {
        ArgumentNullException.ThrowIfNull(message);
        return message.In(ReadPrintStyle.Screen(Tag) ?? MessageLanguage.English);
    }
}
