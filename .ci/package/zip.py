#!/usr/bin/env python3
"""Packs a folder into a zip file, with the same bytes for the same content. Usage: zip.py FOLDER FILE"""
import os
import pathlib
import sys
import time
import zipfile

folder, file = pathlib.Path(sys.argv[1]), sys.argv[2]
when = time.gmtime(int(os.environ["SOURCE_DATE_EPOCH"]))[:6]
with zipfile.ZipFile(file, "x", zipfile.ZIP_DEFLATED, compresslevel=6) as packed:
    for path in sorted(folder.rglob("*")):
        if path.is_file():
            entry = zipfile.ZipInfo(str(path.relative_to(folder.parent)), when)
            entry.external_attr = 0o100755 << 16 if path.suffix in {".exe", ".cmd"} else 0o100644 << 16
            packed.writestr(entry, path.read_bytes(), zipfile.ZIP_DEFLATED)
