using System.Reflection;
using System.Reflection.Emit;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;
using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Tests.Architecture;

namespace ExamDocs.UseCases.Tests.Messages;

/// <summary>
/// The keys of all messages in a built assembly. The compiler turns <c>$"{a} and {b}"</c> into calls with the length of its words, the
/// number of its values, and each of its words; from these the key is put together again.
/// </summary>
internal sealed class MessagesInCode
{
    private readonly PEReader _file;
    private readonly MetadataReader _reader;
    private readonly SortedSet<string> _keys = new(StringComparer.Ordinal);
    private readonly Stack<Begun> _begun = new();

    private MessagesInCode(PEReader file) => (_file, _reader) = (file, file.GetMetadataReader());

    /// <param name="path">Of the assembly.</param>
    public static IReadOnlyCollection<string> In(string path)
    {
        using var file = new PEReader(File.OpenRead(path));
        var code = new MessagesInCode(file);
        foreach (var method in code._reader.MethodDefinitions.Select(code._reader.GetMethodDefinition))
            code.Read(method);
        return code._keys;
    }

    private void Read(MethodDefinition method)
    {
        if (method.RelativeVirtualAddress == 0 || IsMessage(method.GetDeclaringType()))
            return;
        var (numbers, text) = ((Before: 0, Last: 0), "");
        foreach (var (code, operand) in MethodCode.In(_file.GetMethodBody(method.RelativeVirtualAddress).GetILReader()))
        {
            if (MethodCode.Number(code, operand) is { } number)
                numbers = (numbers.Last, number);
            else if (code == OpCodes.Ldstr)
                text = _reader.GetUserString((UserStringHandle)MetadataTokens.Handle((int)operand));
            else if (code == OpCodes.Newobj && NameOf(operand) is ".ctor")
                _begun.Push(new Begun(numbers.Before, numbers.Last));
            else if (code == OpCodes.Callvirt || code == OpCodes.Call)
                Append(NameOf(operand), text);
            End();
        }
        Assert.Empty(_begun);
    }

    private void Append(string? called, string text)
    {
        if (called is nameof(Message.AppendLiteral))
            _begun.Peek().Literal(text);
        else if (called is nameof(Message.AppendFormatted))
            _begun.Peek().Value();
    }

    private void End()
    {
        while (_begun.TryPeek(out var top) && top.IsWhole)
            _keys.Add(_begun.Pop().Key);
    }

    /// <summary>The name of a method of <see cref="Message"/>; null for any other method.</summary>
    private string? NameOf(long token)
    {
        var handle = MetadataTokens.EntityHandle((int)token);
        if (handle.Kind is HandleKind.MethodSpecification)
            handle = _reader.GetMethodSpecification((MethodSpecificationHandle)handle).Method;
        if (handle.Kind is HandleKind.MethodDefinition)
        {
            var defined = _reader.GetMethodDefinition((MethodDefinitionHandle)handle);
            return IsMessage(defined.GetDeclaringType()) ? _reader.GetString(defined.Name) : null;
        }
        var named = _reader.GetMemberReference((MemberReferenceHandle)handle);
        return named.Parent.Kind is HandleKind.TypeReference && IsMessage((TypeReferenceHandle)named.Parent)
            ? _reader.GetString(named.Name)
            : null;
    }

    private bool IsMessage(TypeDefinitionHandle handle)
    {
        var type = _reader.GetTypeDefinition(handle);
        return IsMessage(type.Namespace, type.Name);
    }

    private bool IsMessage(TypeReferenceHandle handle)
    {
        var type = _reader.GetTypeReference(handle);
        return IsMessage(type.Namespace, type.Name);
    }

    private bool IsMessage(StringHandle space, StringHandle name) =>
        _reader.StringComparer.Equals(name, nameof(Message)) && _reader.StringComparer.Equals(space, typeof(Message).Namespace!);

    /// <summary>A message of which not every word was met yet.</summary>
    private sealed class Begun(int letters, int values)
    {
        private readonly Message _message = new(letters, values);
        private int _letters = letters;
        private int _values = values;

        public bool IsWhole => _letters == 0 && _values == 0;

        public string Key => _message.Key;

        public void Literal(string text)
        {
            _message.AppendLiteral(text);
            _letters -= text.Length;
        }

        public void Value()
        {
            _message.AppendFormatted("");
            _values--;
        }
    }
}
