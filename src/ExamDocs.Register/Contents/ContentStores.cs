namespace ExamDocs.Register.Contents;

/// <summary>The stores that a register uses, each opened once.</summary>
internal sealed class ContentStores
{
    private readonly Dictionary<string, ContentStore> _open = new(StringComparer.Ordinal);

    /// <param name="place">An address as the register remembers it; not that of the register itself.</param>
    /// <exception cref="Model.RegisterRefusedException">It is no address that this version knows.</exception>
    public ContentStore At(string place)
    {
        if (!_open.TryGetValue(place, out var store))
        {
            var address = ContentAddress.Read(place);
            _open[place] = store = address.Folder is not null ? new FolderStore(address) : new BucketStore(address);
        }
        return store;
    }
}
