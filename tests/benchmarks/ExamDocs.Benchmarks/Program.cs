using System.Globalization;
using ExamDocs.Benchmarks;
using ExamDocs.Benchmarks.Issuing;
using ExamDocs.Benchmarks.Paired;
using ExamDocs.Benchmarks.Size;

// Each measure stands beside a peer over the same input in the same run; read the ratio, not the milliseconds.
CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
switch (args)
{
    case []:
        PairedRun.All();
        return 0;
    case ["paired", .. var filters]:
        PairedRun.All(filters);
        return 0;
    case ["hostile-one", var file]:
        HostileRun.One(file);
        return 0;
    case ["hostile", .. var only]:
        return HostileRun.All(string.Join(' ', only)) == 0 ? 0 : 1;
    case ["rows-one", var how, var file]:
        RowsRun.One(how, file);
        return 0;
    case ["rows"]:
        RowsRun.All();
        return 0;
    case ["pack-one", var file]:
        await PackRun.OneAsync(file);
        return 0;
    case ["pack"]:
        PackRun.All(Folders.Root);
        return 0;
    case ["issue-loop", var html, var folder]:
        await PrintLoop.AllAsync(html, folder);
        return 0;
    case ["issue-draw", var drawings, var folder]:
        DrawnDirectly.All(drawings, folder);
        return 0;
    case ["issue"]:
        await IssueAsync(5, ["report:1", "report:10", "report:100", "due-label:100", "schedule:1000"]);
        return 0;
    case ["issue", var rounds, .. var cases]:
        await IssueAsync(Number(rounds), cases);
        return 0;
    case ["size-make", var address, var documents]:
        GeneratedRegister.Make(address, Number(documents));
        return 0;
    case ["size", var address, .. var timed]:
        SizeRun.All(address, timed);
        return 0;
    case ["size-due", var address]:
        SizeRun.Due(address);
        return 0;
    case ["size-clients", var address, var clients, var seconds]:
        return ClientsRun.All(address, Number(clients), Number(seconds));
    case ["due-one", var register]:
        DueRun.One(register);
        return 0;
    case ["due-make", var register, var items]:
        DueRun.Make(Folders.Root, register, Number(items));
        return 0;
    case ["due"]:
        DueRun.All(Folders.Root, 10_000, 100_000);
        return 0;
    case ["check"]:
        CheckRun.All(Folders.Root, 5_000);
        return 0;
    case ["check", var items]:
        CheckRun.All(Folders.Root, Number(items));
        return 0;
    case ["check-make", var folder, var items]:
        CheckRun.Write(Folders.Root, folder, Number(items));
        return 0;
    case ["workbench"]:
        await WorkbenchRun.AllAsync(Folders.Root);
        return 0;
    default:
        Console.Error.WriteLine("What is measured, and how, is in docs/performance.md and DEVELOPERS.md.");
        return 2;
}

static int Number(string digits) => int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);

static Task IssueAsync(int rounds, string[] cases) => IssueRun.AllAsync(Folders.Root, rounds, [.. cases.Select(IssueCase.Parse)]);
