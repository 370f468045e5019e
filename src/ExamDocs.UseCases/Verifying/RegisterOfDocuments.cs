using ExamDocs.Register;

namespace ExamDocs.UseCases.Verifying;

/// <summary>The register as verifying asks it.</summary>
internal sealed class RegisterOfDocuments(DocumentRegister register) : IKnownDocuments
{
    public KnownDocument? Find(string number)
    {
        if (register.FindByNumber(number) is { } issued)
            return new KnownDocument { Number = number, State = NumberState.Issued, Sha256 = issued.Sha256 };
        return register.Voided().FirstOrDefault(v => string.Equals(v.Number, number, StringComparison.Ordinal)) is { } voided
            ? new KnownDocument { Number = number, State = NumberState.Void, VoidReason = voided.Reason } : null;
    }
}
