using ExamDocs.UseCases.Tests.Architecture.Planted.High;

namespace ExamDocs.UseCases.Tests.Architecture.Planted.Low;

// Each of these knows the floor above in one way and in no other.
internal class ByBase : Roof;

internal sealed class ByInterface : IRoof;

internal sealed class ByField
{
    public Roof? Above = null;
}

internal abstract class BySignature
{
    public abstract void Take(Roof above);
}

internal sealed class ByTypeArgument
{
    public Dictionary<string, List<Roof[]>>? Above { get; set; }
}

internal abstract class ByConstraint
{
    public abstract T Make<T>()
        where T : IRoof;
}

[Roof]
internal sealed class ByAttribute;

internal sealed class ByAttributeOfParameter
{
    public static int Same([Roof] int number) => number;
}

[System.ComponentModel.TypeConverter(typeof(Roof))]
internal sealed class ByAttributeArgument;

internal sealed class ByCall
{
    public static int Height() => Roof.Height;
}

internal sealed class ByTypeOf
{
    public static string Name(int number) =>
        number switch
        {
            0 or 1 or 2 or 3 or 4 => "none",
            _ => typeof(Roof).Name,
        };
}

internal sealed class ByCatch
{
    public static void Try(Action act)
    {
        try
        {
            act();
        }
        catch (RoofException)
        {
            // Nothing but the clause names it.
        }
    }
}

internal sealed class ByLambda
{
    public static Func<int> Height(int more) => () => more + Roof.Height;
}

internal sealed class ByAsync
{
    public static async Task<int> HeightAsync()
    {
        await Task.Yield();
        return Roof.Height;
    }
}

internal sealed class ByIterator
{
    public static IEnumerable<int> Heights()
    {
        yield return Roof.Height;
    }
}

internal sealed class ByMethodArgument
{
    public static object Make() => Enumerable.Empty<Roof>();
}

internal sealed class ByNested
{
    public static class Within
    {
        public static int Height => Roof.Height;
    }
}

/// <summary>Knows nothing of the floor above: the word roof in a text is none.</summary>
internal sealed class Innocent
{
    public static string Name => "ExamDocs.UseCases.Tests.Architecture.Planted.High.Roof";
}
