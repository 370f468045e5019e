using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Photos;

/// <summary>What reading a photo gave: the photo, or why there is none. Exactly one of the two is null.</summary>
/// <param name="Photo">Ready to print.</param>
/// <param name="Fault">Why it cannot be printed.</param>
public sealed record PhotoReading(PreparedPhoto? Photo, PhotoFault? Fault);

/// <summary>Why a photo cannot be printed.</summary>
/// <param name="Rule">One of <see cref="PhotoRules"/>.</param>
/// <param name="Message">What is wrong, with the photo's name.</param>
/// <param name="Hint">What to do, where it can be said more closely than the rule does.</param>
public sealed record PhotoFault(RuleInfo Rule, Message Message, Message? Hint = null);

/// <summary>Ends the reading of one photo; it never leaves this room.</summary>
internal sealed class PhotoRefusedException(RuleInfo rule, Message why, Message? hint = null) : Exception(why.Text)
{
    public RuleInfo Rule { get; } = rule;

    /// <summary>What is wrong, as the end of "the photo ...".</summary>
    public Message Why { get; } = why;

    public Message? Hint { get; } = hint;

    public static PhotoRefusedException Damaged() =>
        new(
            PhotoRules.NotPrintable,
            $"is cut short or damaged",
            $"Copy it again from the camera, or open it in an image program, look at it, and save it as JPEG."
        );
}
