#!/usr/bin/env bash
# Makes, from the distribution that `mvn package` leaves, an image that needs no JDK and a Debian package of it.
#   package.sh DISTRIBUTION OUTPUT VERSION
# Needs a JDK 17 with jlink and jpackage, and dpkg-deb. With Xvfb here, the class list of a real start is taken too,
# from which the package makes its class-data archive when it is installed.
set -euo pipefail
dist=$(cd "$1" && pwd)
mkdir -p "$2"
out=$(cd "$2" && pwd)
version=${3%-SNAPSHOT}
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
tools=${JAVA_HOME:+$JAVA_HOME/bin/}
architecture=$(dpkg --print-architecture)
options=(-Dfile.encoding=UTF-8 -Djava.awt.headless=true -Xmx768m -XX:+ExitOnOutOfMemoryError)

rm -rf "$out/runtime" "$out/input" "$out/image" "$out/root"
"${tools}jlink" --module-path "$dist/lib/javafx" \
    --add-modules java.se,jdk.unsupported,jdk.crypto.ec,jdk.management,jdk.zipfs,jdk.localedata,javafx.controls \
    --include-locales en,es --strip-debug --no-header-files --no-man-pages --output "$out/runtime"

mkdir "$out/input"
cp -p "$dist"/lib/*.jar "$out/input/"
"${tools}jpackage" --type app-image --name fencerow --app-version "$version" --dest "$out/image" \
    --runtime-image "$out/runtime" --input "$out/input" --main-jar fencerow.jar --main-class fencerow.Main \
    $(printf -- '--java-options %s ' "${options[@]}") \
    --java-options '-Dfencerow.home=$ROOTDIR/showroom'
image=$out/image/fencerow
mkdir "$image/showroom"
cp -a "$dist/content" "$dist/kiosk-config" "$image/showroom/"
cp -p "$dist/THIRD-PARTY.txt" "$image/lib/"
cp -p "$here/class-path.sh" "$image/lib/"
[ -f "$dist/sbom.json" ] && cp -p "$dist/sbom.json" "$image/lib/"

# The classes of a start up to the first screen; read again at install, when the jars lie where they will stay.
if command -v Xvfb > /dev/null; then
    "$here/class-list.sh" "$image" "$dist" "$image/lib/app/classes.lst"
fi

root=$out/root
mkdir -p "$root/opt" "$root/etc/fencerow" "$root/usr/bin" "$root/lib/systemd/system" "$root/DEBIAN"
cp -a "$image" "$root/opt/fencerow"
mv "$root/opt/fencerow/showroom/content" "$root/opt/fencerow/showroom/kiosk-config" "$root/etc/fencerow/"
rm -r "$root/opt/fencerow/showroom"
install -m 755 "$here/fencerow" "$root/usr/bin/fencerow"
install -m 755 "$here/fencerow-session" "$root/opt/fencerow/bin/fencerow-session"
install -m 644 "$here/fencerow-kiosk.service" "$root/lib/systemd/system/"
sed -e "s/@VERSION@/$version/" -e "s/@ARCHITECTURE@/$architecture/" \
    -e "s/@SIZE@/$(du -sk "$root" | cut -f1)/" "$here/control" > "$root/DEBIAN/control"
for script in postinst prerm postrm; do
    install -m 755 "$here/$script" "$root/DEBIAN/$script"
done
# What the owner edits is never overwritten by a newer package without asking.
(cd "$root" && find etc -type f | sort | sed 's|^|/|') > "$root/DEBIAN/conffiles"
dpkg-deb --root-owner-group -Zgzip -z6 --build "$root" "$out/fencerow_${version}_$architecture.deb"
rm -rf "$out/root" "$out/input" "$out/runtime"
