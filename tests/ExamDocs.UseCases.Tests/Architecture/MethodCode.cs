using System.Reflection;
using System.Reflection.Emit;
using System.Reflection.Metadata;

namespace ExamDocs.UseCases.Tests.Architecture;

/// <summary>The operations of a method's code, one after the other.</summary>
internal static class MethodCode
{
    /// <summary>The first byte of the operation codes that have two.</summary>
    private const int TwoBytes = 0xFE;

    private static readonly Dictionary<int, OpCode> Codes = typeof(OpCodes)
        .GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(f => (OpCode)f.GetValue(null)!)
        .ToDictionary(code => (int)(ushort)code.Value);

    /// <summary>Each operation with its operand; of a jump table and of what is longer than eight bytes the operand is 0.</summary>
    public static IReadOnlyList<(OpCode Code, long Operand)> In(BlobReader code)
    {
        var operations = new List<(OpCode, long)>();
        while (code.RemainingBytes > 0)
        {
            int number = code.ReadByte();
            if (number == TwoBytes)
                number = (TwoBytes << 8) | code.ReadByte();
            var operation = Codes[number];
            operations.Add((operation, Operand(ref code, operation.OperandType)));
        }
        return operations;
    }

    /// <summary>The whole number that an operation loads; null for any other operation.</summary>
    public static int? Number(OpCode code, long operand) =>
        code == OpCodes.Ldc_I4 ? (int)operand
        : code == OpCodes.Ldc_I4_S ? (sbyte)operand
        : code.Value >= OpCodes.Ldc_I4_0.Value && code.Value <= OpCodes.Ldc_I4_8.Value ? code.Value - OpCodes.Ldc_I4_0.Value
        : null;

    private static long Operand(ref BlobReader code, OperandType operand)
    {
        switch (operand)
        {
            case OperandType.InlineSwitch:
                var targets = code.ReadInt32();
                code.Offset += sizeof(int) * targets;
                return 0;
            case OperandType.InlineNone:
                return 0;
            case OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar:
                return code.ReadByte();
            case OperandType.InlineVar:
                return code.ReadUInt16();
            case OperandType.InlineI8 or OperandType.InlineR:
                return code.ReadInt64();
            default:
                return code.ReadUInt32();
        }
    }
}
