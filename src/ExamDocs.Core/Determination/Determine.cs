namespace ExamDocs.Core.Determination;

/// <summary>Determines whether each item may stay in service.</summary>
public static class Determine
{
}
