using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace ExamDocs.UseCases.Tests.Architecture;

/// <summary>
/// Every type that the types of a built assembly name: base types, interfaces, fields, signatures, type arguments, constraints,
/// attributes with their arguments, caught exceptions, and what the code of their methods names.
/// </summary>
/// <remarks>Constants and members of enumerations are only seen where their type is: the compiler puts in their values.</remarks>
internal sealed class TypeArrows
{
    private readonly PEReader _file;
    private readonly MetadataReader _reader;
    private readonly MetTypes _met;
    private readonly HashSet<TypeArrow> _arrows = [];

    private TypeArrows(PEReader file)
    {
        (_file, _reader) = (file, file.GetMetadataReader());
        _met = new MetTypes(_reader);
    }

    /// <param name="path">Of the assembly.</param>
    public static IReadOnlyCollection<TypeArrow> In(string path)
    {
        using var file = new PEReader(File.OpenRead(path));
        var arrows = new TypeArrows(file);
        foreach (var type in arrows._reader.TypeDefinitions)
            arrows.Read(type);
        return arrows._arrows;
    }

    /// <summary>Names of the assemblies that an assembly needs.</summary>
    /// <param name="path">Of the assembly.</param>
    public static IReadOnlyList<string> AssembliesOf(string path)
    {
        using var file = new PEReader(File.OpenRead(path));
        var reader = file.GetMetadataReader();
        return [.. reader.AssemblyReferences.Select(a => reader.GetString(reader.GetAssemblyReference(a).Name))];
    }

    private void Read(TypeDefinitionHandle handle)
    {
        var type = _reader.GetTypeDefinition(handle);
        _met.Add(type.BaseType);
        foreach (var implemented in type.GetInterfaceImplementations().Select(_reader.GetInterfaceImplementation))
            _met.Add(implemented.Interface);
        Read(type.GetGenericParameters());
        Read(type.GetCustomAttributes());
        foreach (var field in type.GetFields().Select(_reader.GetFieldDefinition))
        {
            field.DecodeSignature(_met, null);
            Read(field.GetCustomAttributes());
        }
        foreach (var method in type.GetMethods().Select(_reader.GetMethodDefinition))
            Read(method);
        foreach (var property in type.GetProperties().Select(_reader.GetPropertyDefinition))
            Read(property.GetCustomAttributes());
        foreach (var happening in type.GetEvents().Select(_reader.GetEventDefinition))
            Read(happening.GetCustomAttributes());
        var from = _met.Outermost(handle);
        _arrows.UnionWith(_met.Take().Where(to => to != from).Select(to => new TypeArrow(from, to)));
    }

    private void Read(MethodDefinition method)
    {
        method.DecodeSignature(_met, null);
        Read(method.GetGenericParameters());
        Read(method.GetCustomAttributes());
        foreach (var parameter in method.GetParameters().Select(_reader.GetParameter))
            Read(parameter.GetCustomAttributes());
        if (method.RelativeVirtualAddress == 0)
            return;
        var body = _file.GetMethodBody(method.RelativeVirtualAddress);
        _met.Add(body.LocalSignature);
        foreach (var caught in body.ExceptionRegions.Where(r => r.Kind is ExceptionRegionKind.Catch))
            _met.Add(caught.CatchType);
        foreach (var token in MethodTokens.In(body.GetILReader()))
            _met.Add(token);
    }

    private void Read(GenericParameterHandleCollection parameters)
    {
        foreach (var constraint in parameters.SelectMany(p => _reader.GetGenericParameter(p).GetConstraints()))
            _met.Add(_reader.GetGenericParameterConstraint(constraint).Type);
    }

    private void Read(CustomAttributeHandleCollection attributes)
    {
        foreach (var attribute in attributes.Select(_reader.GetCustomAttribute))
            _met.Add(attribute);
    }
}
