#!/usr/bin/env python3
"""Lists what a packaged program is made of: a CycloneDX 1.6 file, and the licences as a text.

Everything comes from the lock file and from the packages as they were restored; nothing is asked from a network.
Usage: parts.py LOCK RID VERSION PACKAGES FONTS_VERSION NOTO_LICENCE SBOM LICENCES
"""
import base64
import json
import os
import pathlib
import re
import sys
import uuid
from datetime import datetime, timezone
from xml.etree import ElementTree

# Compilers and analyzers: they take part in making the program and are not in it.
TOOLS = {"meziantou.analyzer", "microsoft.codeanalysis.bannedapianalyzers", "microsoft.net.illink.tasks"}
RUNTIME = ("microsoft.netcore.app.runtime", "microsoft.aspnetcore.app.runtime")

MIT = """Permission is hereby granted, free of charge, to any person obtaining a copy of this software and associated documentation
files (the "Software"), to deal in the Software without restriction, including without limitation the rights to use, copy,
modify, merge, publish, distribute, sublicense, and/or sell copies of the Software, and to permit persons to whom the
Software is furnished to do so, subject to the following conditions:

The above copyright notice and this permission notice shall be included in all copies or substantial portions of the Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR IMPLIED, INCLUDING BUT NOT LIMITED TO THE
WARRANTIES OF MERCHANTABILITY, FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE AUTHORS OR
COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE,
ARISING FROM, OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE SOFTWARE."""
POSTGRESQL = """Permission to use, copy, modify, and distribute this software and its documentation for any purpose, without fee, and
without a written agreement is hereby granted, provided that the above copyright notice and this paragraph and the following
two paragraphs appear in all copies.

IN NO EVENT SHALL THE COPYRIGHT HOLDER BE LIABLE TO ANY PARTY FOR DIRECT, INDIRECT, SPECIAL, INCIDENTAL, OR CONSEQUENTIAL
DAMAGES, INCLUDING LOST PROFITS, ARISING OUT OF THE USE OF THIS SOFTWARE AND ITS DOCUMENTATION, EVEN IF THE COPYRIGHT HOLDER
HAS BEEN ADVISED OF THE POSSIBILITY OF SUCH DAMAGE.

THE COPYRIGHT HOLDER SPECIFICALLY DISCLAIMS ANY WARRANTIES, INCLUDING, BUT NOT LIMITED TO, THE IMPLIED WARRANTIES OF
MERCHANTABILITY AND FITNESS FOR A PARTICULAR PURPOSE. THE SOFTWARE PROVIDED HEREUNDER IS ON AN "AS IS" BASIS, AND THE
COPYRIGHT HOLDER HAS NO OBLIGATIONS TO PROVIDE MAINTENANCE, SUPPORT, UPDATES, ENHANCEMENTS, OR MODIFICATIONS."""


class Part:
    """One package as it was restored."""

    def __init__(self, packages, name, version):
        self.folder = pathlib.Path(packages, name.lower(), version.lower())
        nuspec = next(self.folder.glob("*.nuspec"))
        root = ElementTree.parse(nuspec).getroot()
        meta = {re.sub(r"\{.*\}", "", e.tag): e for e in root[0]}
        self.name, self.version = meta["id"].text.strip(), version
        self.licence = meta["license"].text if "license" in meta and meta["license"].get("type") == "expression" else None
        if self.licence is None:
            sys.exit(f"{name} {version} names no licence by a known expression: look at it, and say here what it is")
        text = lambda key: (meta[key].text or "").strip() if key in meta else ""
        self.copyright = text("copyright") if re.search("copyright|©", text("copyright"), re.I) else f"Copyright {text('authors')}"
        self.description = " ".join(text("description").split())[:200]

    @property
    def ref(self):
        return f"pkg:nuget/{self.name}@{self.version}"

    @property
    def sha512(self):
        [file] = self.folder.glob("*.nupkg.sha512")
        return base64.b64decode(file.read_text()).hex()

    @property
    def texts(self):
        found = [f for f in self.folder.iterdir() if re.match(r"(licen[cs]e|third-?party-?notices)(\.txt)?$", f.name, re.I)]
        return [f.read_text(encoding="utf-8-sig", errors="replace").strip() for f in sorted(found)]

    def component(self):
        # An expression is an expression even where it is a single name: "MS-PL OR Apache-2.0".
        single = re.fullmatch(r"[A-Za-z0-9.+-]+", self.licence)
        return {
            "type": "library",
            "bom-ref": self.ref,
            "name": self.name,
            "version": self.version,
            "description": self.description,
            "hashes": [{"alg": "SHA-512", "content": self.sha512}],
            "licenses": [{"license": {"id": self.licence}} if single else {"expression": self.licence}],
            "copyright": self.copyright,
            "purl": self.ref,
        }


def locked(lock, rid):
    """What is in the program for one system: the packages by name, what each depends on, and what the projects themselves use."""
    every = json.load(open(lock, encoding="utf-8"))["dependencies"]
    entries = {**every["net10.0"], **every.get(f"net10.0/{rid}", {})}
    packages = {n: e for n, e in entries.items() if e["type"] != "Project" and n.lower() not in TOOLS}
    asked = {n for n, e in entries.items() if e["type"] == "Direct"}
    for entry in entries.values():
        if entry["type"] == "Project":
            asked |= set(entry.get("dependencies", {}))
    by_name = {n.lower(): n for n in packages}
    depends = {n: sorted({by_name[d.lower()] for d in e.get("dependencies", {}) if d.lower() in by_name}) for n, e in packages.items()}
    return packages, depends, sorted({by_name[a.lower()] for a in asked if a.lower() in by_name})


def packs(packages, rid):
    """The parts of the runtime, in the version that the project names: the lock file does not list them."""
    wanted = os.environ["RUNTIME_VERSION"]
    return [Part(packages, f"{name}.{rid}", wanted) for name in RUNTIME]


def fonts(version):
    ref = f"pkg:deb/debian/fonts-noto-core@{version}?arch=all"
    return {
        "type": "file",
        "bom-ref": ref,
        "name": "Noto Sans and Noto Sans Display",
        "version": version,
        "licenses": [{"license": {"id": "OFL-1.1"}}],
        "purl": ref,
    }


def sbom(rid, version, parts, depends, asked, font):
    root = f"pkg:generic/examdocs@{version}?os={rid}"
    when = datetime.fromtimestamp(int(os.environ["SOURCE_DATE_EPOCH"]), timezone.utc)
    ref = {p.name: p.ref for p in parts}
    graph = [{"ref": root, "dependsOn": sorted({ref[a] for a in asked} | {p.ref for p in parts if p.name not in depends} | {font["bom-ref"]})}]
    graph += [{"ref": p.ref, "dependsOn": [ref[d] for d in depends.get(p.name, [])]} for p in parts]
    graph.append({"ref": font["bom-ref"], "dependsOn": []})
    return {
        "$schema": "http://cyclonedx.org/schema/bom-1.6.schema.json",
        "bomFormat": "CycloneDX",
        "specVersion": "1.6",
        "serialNumber": f"urn:uuid:{uuid.uuid5(uuid.NAMESPACE_URL, root + when.isoformat())}",
        "version": 1,
        "metadata": {
            "timestamp": when.strftime("%Y-%m-%dT%H:%M:%SZ"),
            "component": {"type": "application", "bom-ref": root, "name": "examdocs", "version": version},
        },
        "components": [p.component() for p in parts] + [font],
        "dependencies": graph,
    }


def licences(version, parts, noto):
    own = pathlib.Path("LICENSE")
    lines = [f"Licences of what is in ExamDocs {version}", ""]
    lines += ["ExamDocs itself", own.read_text() if own.exists() else "Its source names no licence.", ""]
    lines += [f"{p.name} {p.version}: {p.licence}. {p.copyright}" for p in parts]
    lines += ["Noto Sans and Noto Sans Display: SIL Open Font License 1.1, below."]
    shown = [("MIT", MIT), ("PostgreSQL", POSTGRESQL), ("Apache-2.0", apache()), ("Noto fonts", pathlib.Path(noto).read_text())]
    seen = set()
    for part in parts:
        for text in part.texts:
            if text not in seen:
                shown.append((f"{part.name} {part.version}, as its package has it", text))
            seen.add(text)
    for title, text in shown:
        lines += ["", "=" * 100, title, "=" * 100, text]
    return "\n".join(lines) + "\n"


def apache():
    return pathlib.Path("/usr/share/common-licenses/Apache-2.0").read_text()


def main(lock, rid, version, packages, fonts_version, noto, sbom_file, licences_file):
    names, depends, asked = locked(lock, rid)
    parts = sorted((Part(packages, n, e["resolved"]) for n, e in names.items()), key=lambda p: p.name.lower()) + packs(packages, rid)
    known = {"MIT", "Apache-2.0", "PostgreSQL", "MS-PL OR Apache-2.0"}
    for part in parts:
        if part.licence not in known:
            sys.exit(f"{part.name} {part.version} is under {part.licence}: its text is to be added to parts.py")
    bom = sbom(rid, version, parts, depends, asked, fonts(fonts_version))
    pathlib.Path(sbom_file).write_text(json.dumps(bom, indent=2, ensure_ascii=False) + "\n", encoding="utf-8")
    pathlib.Path(licences_file).write_text(licences(version, parts, noto), encoding="utf-8")


if __name__ == "__main__":
    main(*sys.argv[1:])
