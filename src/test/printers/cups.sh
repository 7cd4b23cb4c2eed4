#!/bin/sh
# Runs a CUPS server of its own with one queue "pdf" that prints into files: cups.sh PORT FOLDER. As root.
# Debian: cups, printer-driver-cups-pdf, and what bus.sh needs.
set -eu
port=$1
folder=$2
model=/usr/share/ppd/cups-pdf/CUPS-PDF_opt.ppd
for tool in cupsd lpadmin; do
    command -v "$tool" > /dev/null || { echo "$tool is not installed" >&2; exit 1; }
done
[ -f "$model" ] || { echo "printer-driver-cups-pdf is not installed" >&2; exit 1; }
[ "$(id -u)" -eq 0 ] || { echo "a CUPS server of its own needs root" >&2; exit 1; }
"$(dirname "$0")/bus.sh"

for part in root cache state spool log tmp; do mkdir -p "$folder/$part"; done
cat > "$folder/cups-files.conf" << END
ServerRoot $folder/root
CacheDir $folder/cache
StateDir $folder/state
RequestRoot $folder/spool
TempDir $folder/tmp
AccessLog $folder/log/access
ErrorLog $folder/log/error
PageLog $folder/log/page
SystemGroup root lpadmin
END
cat > "$folder/cupsd.conf" << END
Listen localhost:$port
Browsing Off
DefaultAuthType None
PreserveJobFiles No
<Location />
  Order allow,deny
  Allow localhost
</Location>
<Location /admin>
  Order allow,deny
  Allow localhost
</Location>
<Policy default>
  JobPrivateAccess default
  JobPrivateValues default
  SubscriptionPrivateAccess default
  SubscriptionPrivateValues default
  <Limit All>
    Order allow,deny
    Allow localhost
  </Limit>
</Policy>
END
# The server drops its rights for the filters it starts; the test's folder is its owner's alone.
chmod 711 "$folder"
chmod 1777 "$folder/tmp"
cupsd -f -c "$folder/cupsd.conf" -s "$folder/cups-files.conf" &
server=$!
trap 'kill $server 2> /dev/null; wait $server' EXIT TERM INT
tries=0
until lpadmin -h "localhost:$port" -p pdf -v cups-pdf:/ -P "$model" -E 2> "$folder/log/queue"; do
    tries=$((tries + 1))
    [ "$tries" -lt 40 ] || { cat "$folder/log/queue" "$folder/log/error" >&2; exit 1; }
    sleep 0.25
done
wait $server
