namespace ExamDocs.UseCases.Tests.Architecture;

/// <summary>A type that stands by itself: what is nested in it, by hand or by the compiler, counts as it.</summary>
/// <param name="Assembly">Simple name of the assembly that defines it.</param>
/// <param name="Namespace">Empty for the global one.</param>
/// <param name="Name">With the number of its type parameters, as metadata write it.</param>
internal sealed record NamedType(string Assembly, string Namespace, string Name);

/// <summary>One type names another, in whatever way.</summary>
internal sealed record TypeArrow(NamedType From, NamedType To);
