namespace ExamDocs.Proof.Tests.Generating;

/// <summary>One change to a record, by accident or in the course of things.</summary>
/// <param name="Name">What it changes.</param>
/// <param name="Weight">How often it is drawn, against the others.</param>
/// <param name="Apply">Changes the draft at the item of that position.</param>
public sealed record Slip(string Name, int Weight, Action<Draft, Dice, int> Apply);
