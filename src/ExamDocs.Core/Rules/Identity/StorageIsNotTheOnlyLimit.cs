using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Identity;

public sealed class StorageIsNotTheOnlyLimit : Rule<ItemCase>
{
    public StorageIsNotTheOnlyLimit()
        : base(
            new RuleInfo(
                "IDN009",
                Severity.Warning,
                "Used kit has a time limit besides storage",
                "The longest storage says nothing on how long the item may serve once in use.",
                $"Record the maker's limit for use or age, or noLimit.",
                "common practice, no source"
            )
        ) =>
        Forbid(
            i =>
                i.Item is { NeverUsed: not true, ObsoleteOn: null }
                && i.Limits.All.Any(l => l is { MaxStorageYears: not null, MaxUseYears: null, MaxAgeYears: null, Unobtainable: null }),
            "/model",
            _ => $"the only time limit recorded is for storage, and the item is in use"
        );
}
