using System.Globalization;

namespace ExamDocs.Core.Rules;

/// <summary>An index as a pointer writes it.</summary>
internal static class Index
{
    public static string Of(int index) => index.ToString(CultureInfo.InvariantCulture);
}
