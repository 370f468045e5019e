namespace ExamDocs.Intake.Vocabulary;

/// <summary>The languages that words are read in.</summary>
internal enum Language
{
    English,
    German,
    French,
}

/// <summary>What people write in one language for a word of the record format.</summary>
/// <param name="Word">The word as the record format has it.</param>
/// <param name="Language">In which language the others are written.</param>
/// <param name="Others">In any letter case; a hyphen and a blank are the same.</param>
internal sealed record Synonym(string Word, Language Language, params string[] Others);
