#!/bin/sh
# Takes the pictures of the window that README.md shows, without a display. Build first: mvn -q -DskipTests package
set -eu
cd "$(dirname "$0")/.."

case $(uname -s)-$(uname -m) in
    Linux-aarch64 | Linux-arm64) machine=linux-aarch64 ;;
    Linux-*) machine=linux ;;
    Darwin-arm64) machine=mac-aarch64 ;;
    Darwin-*) machine=mac ;;
    *) machine=win ;;
esac
libraries=$(echo ui/target/lib/javafx/*-"$machine".jar | tr ' ' ':')

# Monocle draws in memory; the screen that it draws on is as large as the largest picture.
java -Dglass.platform=Monocle -Dmonocle.platform=Headless -Dheadless.geometry=1440x900-32 \
    -Dprism.order=sw -Djava.awt.headless=true \
    -cp "ui/target/test-classes:ui/target/cablewright.jar:$libraries" \
    cablewright.ui.desktop.shell.WindowPictures .pictures
