namespace ExamDocs.UseCases.Tests.Architecture.Planted.High;

/// <summary>What no type of the floor below may know.</summary>
internal class Roof
{
    public static int Height { get; set; }

    public static T Give<T>()
        where T : new() => new();
}

internal interface IRoof;

internal sealed class RoofAttribute : Attribute;

internal sealed class RoofException : Exception;
