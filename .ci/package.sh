#!/usr/bin/env bash
# Makes what users install: one file for each system, a .deb, a zip for Windows, a tool package, checksums, lists of parts.
# Usage: package.sh FOLDER [SYSTEM ...]   makes them into FOLDER, which is new or empty; all systems where none is named
#        package.sh --try [FOLDER]        uses what lies in FOLDER as on a machine without the SDK; makes it first where none is named
set -euo pipefail
root="$(cd "$(dirname "$0")/.." && pwd)"
cd "$root"
own=".ci/package"

if [ "${1:-}" = --try ]; then
  made="${2:-}"
  if [ -z "$made" ]; then
    made="$(mktemp -d)/examdocs"
    bash .ci/package.sh "$made" linux-x64 win-x64 osx-arm64 linux-arm64
  fi
  exec bash "$own/try.sh" "$made"
fi

out="${1:?name the folder to make the packages in}"
systems=("${@:2}")
[ ${#systems[@]} != 0 ] || systems=(linux-x64 linux-arm64 win-x64 osx-arm64)
mkdir -p "$out"
out="$(cd "$out" && pwd)"
[ -z "$(ls -A "$out")" ] || { echo "$out is not empty: nothing in it is overwritten." >&2; exit 1; }
for program in dotnet python3 dpkg-deb xz; do
  command -v "$program" >/dev/null || { echo "Please install $program, then run this again." >&2; exit 1; }
done
bash .ci/setup.sh print

version="$(sed -n 's|.*<Version>\(.*\)</Version>.*|\1|p' Directory.Build.props)"
RUNTIME_VERSION="$(sed -n 's|.*<RuntimeFrameworkVersion>\(.*\)</RuntimeFrameworkVersion>.*|\1|p' src/ExamDocs.Cli/ExamDocs.Cli.csproj)"
SOURCE_DATE_EPOCH="$(git log -1 --format=%ct 2>/dev/null || date +%s)"
export RUNTIME_VERSION SOURCE_DATE_EPOCH DOTNET_TieredPGO=0
noto=/usr/share/fonts/truetype/noto
noto_licence=/usr/share/doc/fonts-noto-core/copyright
noto_version="$(dpkg-query -W -f '${Version}' fonts-noto-core)"
work="$(mktemp -d)"
trap 'rm -rf "$work"' EXIT

# Made from a copy: what a developer has built stays as it is, and nothing that lies about gets in.
source="$work/source"
mkdir -p "$source" "$work/fonts"
git ls-files -co --exclude-standard -z | xargs -0 cp --parents -t "$source"
for face in NotoSans-Regular NotoSans-Bold NotoSans-Italic NotoSans-BoldItalic NotoSansDisplay-Bold; do
  cp "$noto/$face.ttf" "$work/fonts/"
done

build() { # what to do, options: no path of this machine gets into what is made
  (cd "$source" && dotnet "$1" src/ExamDocs.Cli -c Release -v quiet --nologo -p:RestoreLockedMode=true -p:RunAnalyzers=false \
    -p:DebugType=none -p:GenerateDocumentationFile=false -p:PathMap="$source=/examdocs" -p:PackageFonts="$work/fonts" "${@:2}")
}
program() { # system, folder, whether its libraries lie in the one file too
  build publish -p:PackageFor="$1" -p:IncludeNativeLibrariesForSelfExtract="$3" -o "$2"
}
packages="$(dotnet nuget locals global-packages --list | sed 's/^[^:]*: //')"
# The lock file does not hold the parts of the runtime: these are compared with what they were when they were chosen.
same_parts() {
  local name hash found
  while read -r name hash; do
    found="$packages/$name/$RUNTIME_VERSION/$name.$RUNTIME_VERSION.nupkg.sha512"
    [ ! -e "$found" ] || [ "$(cat "$found")" = "$hash" ] || { echo "$name is not the one that is named in $own/runtime.sha512." >&2; return 1; }
  done <"$own/runtime.sha512"
}
texts() { # system, folder, read me: what lies beside the program
  python3 "$own/parts.py" src/ExamDocs.Cli/packages.publish.lock.json "$1" "$version" "$packages" "$noto_version" "$noto_licence" \
    "$2/examdocs.cdx.json" "$2/LICENCES.txt"
  [ -z "$3" ] || sed "s/@VERSION@/$version/g" "$own/READ ME $3.txt" >"$2/READ ME.txt"
}
packed() { # folder, file: the same bytes for the same content
  tar -C "$(dirname "$1")" --sort=name --owner=0 --group=0 --numeric-owner --mtime="@$SOURCE_DATE_EPOCH" -cf - "$(basename "$1")" | gzip -6n >"$2"
}

deb() { # system, Debian's name for it
  local tree="$work/deb-$2" doc="$work/deb-$2/usr/share/doc/examdocs"
  mkdir -p "$tree"/usr/{bin,lib/examdocs,share/applications,share/icons/hicolor/scalable/apps} "$tree/DEBIAN" "$doc"
  program "$1" "$tree/usr/lib/examdocs" false
  ln -s ../lib/examdocs/examdocs "$tree/usr/bin/examdocs"
  cp "$own/examdocs.desktop" "$tree/usr/share/applications/"
  cp "$own/examdocs.svg" "$tree/usr/share/icons/hicolor/scalable/apps/"
  texts "$1" "$doc" ""
  mv "$doc/LICENCES.txt" "$doc/copyright"
  (cd "$source" && cp -r --parents README.md docs examples/visit.xlsx examples/*.json examples/README.md examples/photos "$doc")
  sed -e "s/@VERSION@/$version/" -e "s/@ARCHITECTURE@/$2/" -e "s/@KIB@/$(du -sk "$tree/usr" | cut -f1)/" "$own/control" >"$tree/DEBIAN/control"
  find "$tree" -type d -exec chmod 755 {} + -o -type f -exec chmod 644 {} +
  chmod 755 "$tree/usr/lib/examdocs/examdocs"
  (cd "$tree" && find usr -type f -print0 | sort -z | xargs -0 md5sum >DEBIAN/md5sums)
  dpkg-deb --root-owner-group -Zxz -z3 --build "$tree" "$out/examdocs_${version}_$2.deb" >/dev/null
}

single() { # system, read me, further files: a folder with the one file and what lies beside it
  local folder="$work/examdocs-$version-$1"
  program "$1" "$folder" true
  # One file means one: a library that lies beside it would be missed where only the file is copied.
  [ "$(ls "$folder" | wc -l)" = 1 ] || { echo "$1 came out as more than one file: $(ls "$folder")" >&2; return 1; }
  texts "$1" "$folder" "$2"
  [ $# -lt 3 ] || cp -p "${@:3}" "$folder/"
}

for system in "${systems[@]}"; do
  echo "Making $system ..."
  case "$system" in
    linux-x64 | linux-arm64)
      single "$system" Linux "$own/examdocs.svg"
      deb "$system" "$([ "$system" = linux-x64 ] && echo amd64 || echo arm64)" ;;
    osx-arm64) single "$system" macOS "$own/Open ExamDocs.command" ;;
    win-x64)
      single "$system" Windows "$own/Open ExamDocs.cmd"
      sed -i 's/$/\r/' "$work/examdocs-$version-$system"/*.txt "$work/examdocs-$version-$system"/*.cmd ;;
    *) echo "There is no package for $system." >&2; exit 1 ;;
  esac
  same_parts
  folder="$work/examdocs-$version-$system"
  cp "$folder/examdocs.cdx.json" "$out/examdocs-$version-$system.cdx.json"
  if [ "$system" = win-x64 ]; then
    python3 "$own/zip.py" "$folder" "$out/examdocs-$version-$system.zip"
  else
    packed "$folder" "$out/examdocs-$version-$system.tar.gz"
  fi
done

echo "Making the tool package ..."
build pack -o "$out"
(cd "$out" && sha256sum -- * >"$work/sums" && mv "$work/sums" SHA256SUMS)
echo "In $out:"
ls -lh "$out" | awk 'NR > 1 { print "  " $9 "  " $5 }'
