#!/usr/bin/env python3
"""Looks at what cannot be run here: programs for other systems, lists of parts, texts. Usage: look.py FOLDER VERSION"""
import json
import pathlib
import struct
import sys
import tarfile
import zipfile

made, version = pathlib.Path(sys.argv[1]), sys.argv[2]
# Every face holds its licence, in UTF-16: OpenType, name table.
FONT_LICENCE = "SIL Open Font License".encode("utf-16-be")
SYSTEMS = sorted(f.name.removeprefix(f"examdocs-{version}-").removesuffix(".cdx.json") for f in made.glob("*.cdx.json"))


def content(system):
    """What is in a package, by name, with its mode."""
    if system == "win-x64":
        with zipfile.ZipFile(made / f"examdocs-{version}-{system}.zip") as packed:
            return {e.filename.split("/", 1)[1]: (packed.read(e), e.external_attr >> 16) for e in packed.infolist()}
    with tarfile.open(made / f"examdocs-{version}-{system}.tar.gz") as packed:
        return {e.name.split("/", 1)[1]: (packed.extractfile(e).read(), e.mode) for e in packed if e.isfile()}


def must(holds, what):
    if not holds:
        sys.exit(f"{what}")


def elf(data, machine):
    # System V ABI, ELF header: e_machine is at byte 18; 62 is x86-64, 183 is AArch64.
    must(data[:4] == b"\x7fELF" and struct.unpack_from("<H", data, 18)[0] == machine, "no Linux program for this processor")


def pe(data):
    # PE format: the machine follows the signature; 0x8664 is x64. Subsystem 3 is a console, whose window shows the address.
    at = struct.unpack_from("<I", data, 0x3C)[0]
    must(data[:2] == b"MZ" and data[at : at + 4] == b"PE\0\0", "no Windows program")
    must(struct.unpack_from("<H", data, at + 4)[0] == 0x8664, "not for x64")
    must(struct.unpack_from("<H", data, at + 24 + 68)[0] == 3, "not a console program")


def macho(data):
    # Mach-O: 64-bit, CPU 0x0100000C is arm64. Such a program does not start without a signature (load command 0x1D).
    magic, cpu, _, _, commands, _, _, _ = struct.unpack_from("<8I", data, 0)
    must(magic == 0xFEEDFACF and cpu == 0x0100000C, "no macOS program for Apple silicon")
    at, kinds = 32, []
    for _ in range(commands):
        kind, size = struct.unpack_from("<2I", data, at)
        kinds.append(kind)
        at += size
    must(0x1D in kinds, "the macOS program bears no signature: it would not start")


def parts(system):
    bom = json.loads((made / f"examdocs-{version}-{system}.cdx.json").read_text(encoding="utf-8"))
    must((bom["bomFormat"], bom["specVersion"]) == ("CycloneDX", "1.6"), "no CycloneDX 1.6")
    entries = json.loads(pathlib.Path("src/ExamDocs.Cli/packages.publish.lock.json").read_text(encoding="utf-8"))["dependencies"]
    locked = {(n, e["resolved"]) for k in ("net10.0", f"net10.0/{system}") for n, e in entries[k].items() if e["type"] != "Project"}
    listed = {(c["name"], c["version"]) for c in bom["components"]}
    missing = {n for n, v in locked if (n, v) not in listed}
    tools = {"Meziantou.Analyzer", "Microsoft.CodeAnalysis.BannedApiAnalyzers", "Microsoft.NET.ILLink.Tasks"}
    must(missing == tools, f"the list of parts of {system} leaves out {missing - tools}, and has {tools - missing}")
    refs = {c["bom-ref"] for c in bom["components"]} | {bom["metadata"]["component"]["bom-ref"]}
    must(len(refs) == len(bom["components"]) + 1, "two parts have one reference")
    must({d["ref"] for d in bom["dependencies"]} == refs, "not every part has its dependencies")
    must(all(r in refs for d in bom["dependencies"] for r in d["dependsOn"]), "a part depends on one that is not listed")
    must(any("noto" in c["bom-ref"] for c in bom["components"]), "the fonts are not listed")


must("linux-x64" in SYSTEMS or "linux-arm64" in SYSTEMS, "there is nothing for Linux, so nothing that can be tried")
for system in SYSTEMS:
    files = content(system)
    program = "examdocs.exe" if system == "win-x64" else "examdocs"
    data, mode = files[program]
    must(mode & 0o111, f"{system}: nobody may run the program")
    {"win-x64": pe, "osx-arm64": macho}.get(system, lambda d: elf(d, 183 if system == "linux-arm64" else 62))(data)
    # Resources are stored as they are: the fonts must be there, and not only their names.
    must(data.count(b"fonts/NotoSans") >= 1 and data.count(FONT_LICENCE) >= 5, f"{system}: the fonts are not within")
    text = files["READ ME.txt"][0].decode("utf-8")
    must(version in text and "@" not in text, f"{system}: READ ME.txt is not filled in")
    must(b"SIL OPEN FONT LICENSE" in files["LICENCES.txt"][0].upper(), f"{system}: the licence of the fonts is missing")
    parts(system)
    if system == "win-x64":
        start = files["Open ExamDocs.cmd"][0]
        must(start.count(b"\n") == start.count(b"\r\n") > 3, "the start for Windows has lines that Windows does not know")
        must(b"workbench" in start, "the start for Windows does not open the pages")
    if system == "osx-arm64":
        must(files["Open ExamDocs.command"][1] & 0o111, "the start for macOS cannot be run")
