#!/bin/sh
# Runs a reference IPP printer: start.sh PORT FOLDER [OPTIONS]. Debian: cups-ipp-utils, and what bus.sh needs.
set -eu
port=$1
folder=$2
shift 2
command -v ippeveprinter > /dev/null || { echo "ippeveprinter is not installed" >&2; exit 1; }
"$(dirname "$0")/bus.sh"
case " $* " in
    *" -f "*) ;;
    *) set -- -f application/pdf "$@" ;;
esac
exec ippeveprinter -p "$port" -d "$folder" -k -s 60,60 "$@" "Fencerow test printer"
