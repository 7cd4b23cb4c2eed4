#!/bin/sh
# Runs a reference IPP printer: start.sh PORT FOLDER [OPTIONS]. It needs a system bus and a name service to announce
# itself to; both are started where they do not run. Debian: cups-ipp-utils, dbus, avahi-daemon.
set -eu
port=$1
folder=$2
shift 2
for tool in ippeveprinter dbus-daemon avahi-daemon; do
    command -v "$tool" > /dev/null || { echo "$tool is not installed" >&2; exit 1; }
done
if [ ! -S /run/dbus/system_bus_socket ]; then
    mkdir -p /run/dbus
    dbus-daemon --system --fork
fi
avahi-daemon --check || avahi-daemon --daemonize
case " $* " in
    *" -f "*) ;;
    *) set -- -f application/pdf "$@" ;;
esac
exec ippeveprinter -p "$port" -d "$folder" -k -s 60,60 "$@" "Fencerow test printer"
