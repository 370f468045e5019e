#!/usr/bin/env bash
# Installs what printing and testing need, where apt may; else says exactly what to install. Quick when all is there.
# Usage: setup.sh print|test
set -euo pipefail

need_print() {
  [ -x "${EXAMDOCS_BROWSER:-/usr/lib/chromium/chromium-headless-shell}" ] || command -v chromium >/dev/null || command -v google-chrome >/dev/null || echo chromium-headless-shell
  [ "$(fc-list 2>/dev/null | grep -c 'NotoSans-Regular')" != 0 ] || echo fonts-noto-core
  # Chinese, Japanese and Korean, as TrueType: other formats are embedded as drawings.
  [ "$(fc-list 2>/dev/null | grep -c 'DroidSansFallback')" != 0 ] || echo fonts-droid-fallback
}
need_test() {
  need_print
  command -v pdftotext >/dev/null || echo poppler-utils
  command -v qpdf >/dev/null || echo qpdf
  command -v zbarimg >/dev/null || echo zbar-tools
  command -v openssl >/dev/null || echo openssl
  # Keeps the root that pdfsig is to trust.
  command -v certutil >/dev/null || echo libnss3-tools
  command -v soffice >/dev/null || echo libreoffice-calc
  command -v node >/dev/null || echo nodejs
  command -v npm >/dev/null || echo npm
  # Its own user and programs are all that is needed; the tests start a server of their own.
  ls /usr/lib/postgresql/*/bin/initdb >/dev/null 2>&1 || echo postgresql
  /usr/bin/python3 -c 'import openpyxl' 2>/dev/null || echo python3-openpyxl
}

command -v dotnet >/dev/null || { echo "Install the .NET SDK that global.json names, then run this again." >&2; exit 1; }
command -v fc-list >/dev/null || missing_fontconfig=fontconfig
missing="${missing_fontconfig:-} $("need_${1:-print}" | tr '\n' ' ')"
missing="$(echo "$missing" | xargs)"
[ -z "$missing" ] && exit 0

if command -v apt-get >/dev/null && { [ "$(id -u)" = 0 ] || sudo -n true 2>/dev/null; }; then
  as_root() { if [ "$(id -u)" = 0 ]; then "$@"; else sudo "$@"; fi; }
  echo "Installing: $missing"
  as_root apt-get update -qq
  # Where PostgreSQL comes anew, no server of this machine's own is made and started.
  no_cluster=/etc/postgresql-common/createcluster.d/examdocs-tests.conf
  case " $missing " in
    *" postgresql "*) as_root mkdir -p "${no_cluster%/*}"; echo "create_main_cluster = false" | as_root tee "$no_cluster" >/dev/null ;;
  esac
  # shellcheck disable=SC2086
  DEBIAN_FRONTEND=noninteractive as_root apt-get install -y -qq --no-install-recommends $missing >/dev/null
  as_root rm -f "$no_cluster"
else
  echo "Please install these Debian packages (or their like), then run this again: $missing" >&2
  exit 1
fi
