using System.Reflection.Emit;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;

namespace ExamDocs.UseCases.Tests.Architecture;

/// <summary>The types and members that the code of a method names.</summary>
internal static class MethodTokens
{
    public static IReadOnlyList<EntityHandle> In(BlobReader code) =>
        [
            .. MethodCode
                .In(code)
                .Where(o =>
                    o.Code.OperandType
                        is OperandType.InlineField
                            or OperandType.InlineMethod
                            or OperandType.InlineSig
                            or OperandType.InlineTok
                            or OperandType.InlineType
                )
                .Select(o => MetadataTokens.EntityHandle((int)o.Operand)),
        ];
}
