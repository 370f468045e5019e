using System.Collections.Immutable;
using System.Reflection.Metadata;
using System.Text;
using System.Text.RegularExpressions;

namespace ExamDocs.UseCases.Tests.Architecture;

/// <summary>Gathers the types that signatures, tokens and attributes of one assembly name.</summary>
internal sealed partial class MetTypes(MetadataReader reader) : ISignatureTypeProvider<NamedType?, object?>
{
    private readonly string _assembly = reader.GetString(reader.GetAssemblyDefinition().Name);
    private readonly ILookup<string, TypeDefinitionHandle> _own = reader.TypeDefinitions.ToLookup(
        h => FullName(reader, h),
        StringComparer.Ordinal
    );
    private readonly HashSet<NamedType> _met = [];

    /// <summary>What was met since this was last called.</summary>
    public IReadOnlyList<NamedType> Take()
    {
        NamedType[] taken = [.. _met];
        _met.Clear();
        return taken;
    }

    /// <summary>The type that the handle is of, or that declares the member it is of, with all type arguments.</summary>
    public void Add(EntityHandle handle)
    {
        if (handle.IsNil)
            return;
        switch (handle.Kind)
        {
            case HandleKind.TypeDefinition:
                _met.Add(Outermost((TypeDefinitionHandle)handle));
                break;
            case HandleKind.TypeReference:
                _met.Add(Outermost((TypeReferenceHandle)handle));
                break;
            case HandleKind.TypeSpecification:
                reader.GetTypeSpecification((TypeSpecificationHandle)handle).DecodeSignature(this, null);
                break;
            case HandleKind.StandaloneSignature when reader.GetStandaloneSignature((StandaloneSignatureHandle)handle) is var signature:
                if (signature.GetKind() is StandaloneSignatureKind.LocalVariables)
                    signature.DecodeLocalSignature(this, null);
                else
                    signature.DecodeMethodSignature(this, null);
                break;
            default:
                AddOwner(handle);
                break;
        }
    }

    /// <summary>An attribute with the types of this assembly that its arguments name.</summary>
    public void Add(CustomAttribute attribute)
    {
        Add(attribute.Constructor);
        foreach (Match name in TypeNames().Matches(Encoding.UTF8.GetString(reader.GetBlobBytes(attribute.Value))))
        {
            // The length that stands before the name may look like a letter of it.
            foreach (var own in _own[name.Value].Concat(_own[name.Value[1..]]))
                Add(own);
        }
    }

    public NamedType Outermost(TypeDefinitionHandle handle)
    {
        var type = reader.GetTypeDefinition(handle);
        return type.GetDeclaringType() is { IsNil: false } within
            ? Outermost(within)
            : new NamedType(_assembly, reader.GetString(type.Namespace), reader.GetString(type.Name));
    }

    private void AddOwner(EntityHandle handle)
    {
        switch (handle.Kind)
        {
            case HandleKind.MethodDefinition:
                Add(reader.GetMethodDefinition((MethodDefinitionHandle)handle).GetDeclaringType());
                break;
            case HandleKind.FieldDefinition:
                Add(reader.GetFieldDefinition((FieldDefinitionHandle)handle).GetDeclaringType());
                break;
            case HandleKind.MemberReference:
                Add(reader.GetMemberReference((MemberReferenceHandle)handle).Parent);
                break;
            case HandleKind.MethodSpecification when reader.GetMethodSpecification((MethodSpecificationHandle)handle) is var method:
                Add(method.Method);
                method.DecodeSignature(this, null);
                break;
            default:
                throw new InvalidOperationException($"no way is known to read what a {handle.Kind} names");
        }
    }

    private NamedType Outermost(TypeReferenceHandle handle)
    {
        var type = reader.GetTypeReference(handle);
        return type.ResolutionScope.Kind switch
        {
            HandleKind.TypeReference => Outermost((TypeReferenceHandle)type.ResolutionScope),
            HandleKind.AssemblyReference => Named(
                reader.GetString(reader.GetAssemblyReference((AssemblyReferenceHandle)type.ResolutionScope).Name),
                type
            ),
            _ => Named(_assembly, type),
        };
    }

    private NamedType Named(string assembly, TypeReference type) =>
        new(assembly, reader.GetString(type.Namespace), reader.GetString(type.Name));

    private static string FullName(MetadataReader reader, TypeDefinitionHandle handle)
    {
        var type = reader.GetTypeDefinition(handle);
        var name = reader.GetString(type.Name);
        return type.GetDeclaringType() is { IsNil: false } within
            ? $"{FullName(reader, within)}+{name}"
            : $"{reader.GetString(type.Namespace)}.{name}";
    }

    [GeneratedRegex(@"[\w.+`<>]+", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex TypeNames();

    NamedType? ISimpleTypeProvider<NamedType?>.GetTypeFromDefinition(
        MetadataReader reader,
        TypeDefinitionHandle handle,
        byte rawTypeKind
    ) => Meet(handle);

    NamedType? ISimpleTypeProvider<NamedType?>.GetTypeFromReference(MetadataReader reader, TypeReferenceHandle handle, byte rawTypeKind) =>
        Meet(handle);

    NamedType? ISignatureTypeProvider<NamedType?, object?>.GetTypeFromSpecification(
        MetadataReader reader,
        object? genericContext,
        TypeSpecificationHandle handle,
        byte rawTypeKind
    ) => Meet(handle);

    private NamedType? Meet(EntityHandle handle)
    {
        Add(handle);
        return null;
    }

    // What is built of other types has met them already.
    NamedType? ISimpleTypeProvider<NamedType?>.GetPrimitiveType(PrimitiveTypeCode typeCode) => null;

    NamedType? ISZArrayTypeProvider<NamedType?>.GetSZArrayType(NamedType? elementType) => null;

    NamedType? IConstructedTypeProvider<NamedType?>.GetArrayType(NamedType? elementType, ArrayShape shape) => null;

    NamedType? IConstructedTypeProvider<NamedType?>.GetByReferenceType(NamedType? elementType) => null;

    NamedType? IConstructedTypeProvider<NamedType?>.GetPointerType(NamedType? elementType) => null;

    NamedType? IConstructedTypeProvider<NamedType?>.GetGenericInstantiation(
        NamedType? genericType,
        ImmutableArray<NamedType?> typeArguments
    ) => null;

    NamedType? ISignatureTypeProvider<NamedType?, object?>.GetFunctionPointerType(MethodSignature<NamedType?> signature) => null;

    NamedType? ISignatureTypeProvider<NamedType?, object?>.GetGenericMethodParameter(object? genericContext, int index) => null;

    NamedType? ISignatureTypeProvider<NamedType?, object?>.GetGenericTypeParameter(object? genericContext, int index) => null;

    NamedType? ISignatureTypeProvider<NamedType?, object?>.GetModifiedType(
        NamedType? modifier,
        NamedType? unmodifiedType,
        bool isRequired
    ) => null;

    NamedType? ISignatureTypeProvider<NamedType?, object?>.GetPinnedType(NamedType? elementType) => null;
}
