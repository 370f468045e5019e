#!/bin/sh
# Opens the pages. They stay open as long as this window does.
exec "$(dirname "$0")/examdocs" workbench "$@"
