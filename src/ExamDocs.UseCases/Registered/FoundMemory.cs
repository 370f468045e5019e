using System.Collections.Concurrent;
using System.Globalization;
using ExamDocs.Register;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// What was found of markings already looked up, for a list that grows by one at a time. It holds for one day and one state of the
/// register's log, which has an entry for everything that can change an answer; after that all of it is looked up again.
/// </summary>
public sealed class FoundMemory
{
    private State _state = new("");

    internal State StateOf(DocumentRegister register, LocalDate day)
    {
        var log = register.Checkpoint();
        var name = string.Create(
            CultureInfo.InvariantCulture,
            $"{register.Identity} {log?.Size} {(log is null ? "" : Convert.ToHexString(log.Root.Span))} {day}"
        );
        if (!string.Equals(_state.Name, name, StringComparison.Ordinal))
            _state = new State(name);
        return _state;
    }

    /// <summary>What was found in one state of a register.</summary>
    /// <param name="name">Of the register, its log and the day.</param>
    internal sealed class State(string name)
    {
        private readonly ConcurrentDictionary<string, IReadOnlyList<FoundItem>> _found = new(StringComparer.Ordinal);

        private readonly ConcurrentDictionary<string, IReadOnlyList<FoundItem>> _like = new(StringComparer.Ordinal);

        private OwnersMarks? _marks;

        public string Name { get; } = name;

        /// <summary>The owner's marks in the register in this state.</summary>
        public OwnersMarks Marks(DocumentRegister register) => _marks ??= new OwnersMarks(register);

        public IReadOnlyList<FoundItem> Of(string marking, Func<string, IReadOnlyList<FoundItem>> find) => _found.GetOrAdd(marking, find);

        /// <summary>Those spelt much like one that no item bears.</summary>
        public IReadOnlyList<FoundItem> Like(string marking, Func<string, IReadOnlyList<FoundItem>> find) => _like.GetOrAdd(marking, find);
    }
}
