#!/bin/sh
# Prints the class path of the image whose lib/app folder is given, in the launcher's order.
set -eu
sed -n "s|^app.classpath=\$APPDIR|$1|p" "$1/fencerow.cfg" | paste -s -d:
