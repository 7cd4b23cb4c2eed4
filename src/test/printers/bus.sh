#!/bin/sh
# A system bus and a name service, as printers need them to announce themselves; each started where it does not answer.
# Debian: dbus, avahi-daemon.
set -eu
for tool in dbus-daemon dbus-send avahi-daemon; do
    command -v "$tool" > /dev/null || { echo "$tool is not installed" >&2; exit 1; }
done
answers() {
    dbus-send --system --print-reply --dest=org.freedesktop.DBus / org.freedesktop.DBus.GetId > /dev/null 2>&1
}
if ! answers; then
    # A bus that ended badly leaves these behind, and would not start again.
    rm -f /run/dbus/pid /run/dbus/system_bus_socket
    mkdir -p /run/dbus
    dbus-daemon --system --fork > /dev/null
fi
avahi-daemon --check 2> /dev/null || { rm -f /run/avahi-daemon/pid; avahi-daemon --daemonize > /dev/null 2>&1; }
