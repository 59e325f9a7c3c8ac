#!/bin/sh
# Draws the pictures in this folder anew: every workbench with the demo in light and dark, in this size and on a display of twice
# the size (-2x), a shop without jobs (empty-), and one with sixty jobs and plans of two hundred steps (large-).
# Needs xvfb-run; with ImageMagick the pictures become smaller files.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
cd "$here/../.."
mvn -B -q test-compile dependency:build-classpath -Dmdep.outputFile=target/screenshots.path -Dmdep.includeScope=test
path="$PWD/suite-swing/target/classes:$PWD/suite-swing/target/test-classes:$(cat suite-swing/target/screenshots.path)"
new=$(mktemp -d)
draw() {
    (cd suite-swing && xvfb-run -a -s "-screen 0 $1x24" java -Duser.language=en -Duser.country=GB -Dsun.java2d.uiScale="$2" \
        -Dbaywright.home="$PWD/.." -cp "$path" baywright.swing.Screenshots "$new/$2" documents)
}
draw 1280x800 1
draw 2560x1600 2
for picture in "$new"/2/*-light.png "$new"/2/*-dark.png; do
    name=$(basename "$picture" .png)
    mv "$picture" "$new/1/$name-2x.png"
done
for picture in "$new"/1/*.png; do
    if command -v convert >/dev/null; then convert "$picture" +dither -colors 220 "PNG8:$picture"; fi
    mv "$picture" "$here/"
done
rm -r "$new"
