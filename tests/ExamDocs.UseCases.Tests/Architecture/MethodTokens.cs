using System.Reflection;
using System.Reflection.Emit;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;

namespace ExamDocs.UseCases.Tests.Architecture;

/// <summary>The types and members that the code of a method names.</summary>
internal static class MethodTokens
{
    /// <summary>The first byte of the operation codes that have two.</summary>
    private const int TwoBytes = 0xFE;

    private static readonly Dictionary<int, OperandType> Operands = typeof(OpCodes)
        .GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(f => (OpCode)f.GetValue(null)!)
        .ToDictionary(code => (int)(ushort)code.Value, code => code.OperandType);

    public static IReadOnlyList<EntityHandle> In(BlobReader code)
    {
        var tokens = new List<EntityHandle>();
        while (code.RemainingBytes > 0)
        {
            int operation = code.ReadByte();
            if (operation == TwoBytes)
                operation = (TwoBytes << 8) | code.ReadByte();
            var operand = Operands[operation];
            if (
                operand
                is OperandType.InlineField
                    or OperandType.InlineMethod
                    or OperandType.InlineSig
                    or OperandType.InlineTok
                    or OperandType.InlineType
            )
                tokens.Add(MetadataTokens.EntityHandle(code.ReadInt32()));
            else
                Skip(ref code, operand is OperandType.InlineSwitch ? sizeof(int) * code.ReadInt32() : LengthOf(operand));
        }
        return tokens;
    }

    private static void Skip(ref BlobReader code, int bytes) => code.Offset += bytes;

    /// <summary>In bytes.</summary>
    private static int LengthOf(OperandType operand) =>
        operand switch
        {
            OperandType.InlineNone => 0,
            OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
            OperandType.InlineVar => 2,
            OperandType.InlineBrTarget or OperandType.InlineI or OperandType.InlineString or OperandType.ShortInlineR => 4,
            OperandType.InlineI8 or OperandType.InlineR => 8,
            _ => throw new InvalidOperationException($"the length of a {operand} is not known"),
        };
}
