#!/bin/sh
# Installs the Debian packages that Cablewright needs beside Java and Maven.
#
#   sh .setup/install-packages.sh run    what the desktop needs
#   sh .setup/install-packages.sh test   what the tests need
#
# Quick when all are there. Where it may not install, or there is no apt-get, it says what is missing, how to get it
# and what won't work without, and still ends with 0: the build and most of the program work all the same.
set -u

mode=${1:-run}
case $mode in
    # JavaFX draws through GTK, takes keys through libXtst and sets text through Pango with some font.
    run) packages='libgtk-3-0 libxtst6 libpangoft2-1.0-0 fonts-dejavu-core' without='the desktop may not open' ;;
    # The tests draw in memory, so they need text but no GTK; ngspice checks the netlists,
    # GNU parallel runs the shards of a study, age opens what exams seal.
    test) packages='libpangoft2-1.0-0 fonts-dejavu-core ngspice parallel age' without='some tests may fail or be skipped' ;;
    *)
        echo "install-packages.sh: unknown mode '$mode'. Use 'run' or 'test'." >&2
        exit 2
        ;;
esac

if [ "$(uname -s)" != Linux ]; then
    exit 0 # Windows and macOS bring what JavaFX needs.
fi

is_installed() { # a package, or the name it has since Debian 13, with its "t64" ending
    dpkg-query -W -f='${db:Status-Status}\n' "$1" "$1t64" 2>/dev/null | grep -qx installed
}

available_name() { # the name under which this release has the package
    if apt-cache show "$1" >/dev/null 2>&1; then echo "$1"; else echo "$1t64"; fi
}

missing_packages() {
    for package in $packages; do
        is_installed "$package" || printf '%s ' "$package"
    done
}

give_up() {
    echo "install-packages.sh: $1" >&2
    echo "  missing: $missing" >&2
    echo "  to get them: $2" >&2
    echo "  going on; without them $without." >&2
    exit 0
}

if ! command -v dpkg-query >/dev/null 2>&1; then
    missing=$packages
    give_up 'this is not a Debian system, so nothing was checked' \
        'install what your system calls these Debian packages, if it lacks them'
fi

missing=$(missing_packages)
[ -z "$missing" ] && exit 0
by_hand="sudo apt-get update && sudo apt-get install $missing"

command -v apt-get >/dev/null 2>&1 || give_up 'there is no apt-get' 'install them with the tool your system has'

as_root=
if [ "$(id -u)" -ne 0 ]; then
    as_root='sudo -n'
    sudo -n true 2>/dev/null || give_up 'installing needs root' "$by_hand"
fi

echo "install-packages.sh: installing $missing" >&2
$as_root apt-get update -qq >&2 || give_up 'apt-get update failed' "$by_hand"
names=
for package in $missing; do
    names="$names $(available_name "$package")"
done
# shellcheck disable=SC2086 # names and as_root are lists of words
$as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $names >&2 </dev/null

missing=$(missing_packages)
[ -z "$missing" ] || give_up 'apt-get install failed' "$by_hand"
