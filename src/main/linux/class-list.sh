#!/usr/bin/env bash
# Writes the list of the classes that a start of the kiosk loads: class-list.sh IMAGE HOME FILE
set -euo pipefail
image=$1
work=$(mktemp -d)
trap 'kill "$screen" 2> /dev/null || true; rm -rf "$work"' EXIT
exec 3<> "$work/display"
Xvfb -displayfd 3 -screen 0 1280x720x24 > /dev/null 2>&1 &
screen=$!
exec 3>&-
for _ in $(seq 50); do
    [ -s "$work/display" ] && break
    sleep 0.1
done
class_path=$(sh "$image/lib/class-path.sh" "$image/lib/app")
# Enough time to read the content and show the first screen; the kiosk itself does not end.
DISPLAY=":$(cat "$work/display")" HOME=$work timeout 40 "$image/lib/runtime/bin/java" -Xshare:off \
    -XX:DumpLoadedClassList="$3" -Dfile.encoding=UTF-8 -Djava.awt.headless=true -Dfencerow.home="$2" \
    -Dfencerow.data="$work/data" -cp "$class_path" fencerow.Main kiosk || true
[ -s "$3" ]
