namespace ExamDocs.Intake.Workbook.Package;

/// <summary>One link between parts; external ones are never followed.</summary>
internal sealed record Relationship(string Id, string Type, string Target, bool External)
{
    public bool IsOf(string kind) => Type.EndsWith("/" + kind, StringComparison.Ordinal);
}

internal static class Relationships
{
    /// <summary>The links that start at a part; an empty name stands for the package itself.</summary>
    public static List<Relationship> Of(WorkbookPackage package, string part)
    {
        var links = PartOf(part);
        return package.Has(links) ? In(package, links, part[..(part.LastIndexOf('/') + 1)]) : [];
    }

    /// <summary>The links in a part of links.</summary>
    /// <param name="package">The workbook.</param>
    /// <param name="links">The part of links.</param>
    /// <param name="folder">Where targets are counted from.</param>
    public static List<Relationship> In(WorkbookPackage package, string links, string folder = "")
    {
        var found = new List<Relationship>();
        using var reader = package.Read(links);
        while (reader.Read() && found.Count <= WorkbookLimits.Parts)
        {
            if (reader.AtStart && reader.Is("Relationship"))
                found.Add(One(reader, folder));
        }
        return found;
    }

    /// <summary>The part that holds the links which start at a part.</summary>
    public static string PartOf(string part)
    {
        var slash = part.LastIndexOf('/') + 1;
        return $"{part[..slash]}_rels/{part[slash..]}.rels";
    }

    private static Relationship One(PartReader reader, string folder) =>
        new(
            reader.Attribute("Id") ?? "",
            reader.Attribute("Type") ?? "",
            IsExternal(reader) ? reader.Attribute("Target") ?? "" : Resolve(folder, reader.Attribute("Target") ?? ""),
            IsExternal(reader)
        );

    private static bool IsExternal(PartReader reader) =>
        string.Equals(reader.Attribute("TargetMode"), "External", StringComparison.OrdinalIgnoreCase);

    private static string Resolve(string folder, string target)
    {
        if (target.StartsWith('/'))
            return target[1..];
        var steps = new List<string>();
        foreach (var step in (folder + target).Split('/'))
        {
            if (step is "..")
                steps.RemoveRange(Math.Max(0, steps.Count - 1), Math.Min(1, steps.Count));
            else if (step is not ("." or ""))
                steps.Add(step);
        }
        return string.Join('/', steps);
    }
}
