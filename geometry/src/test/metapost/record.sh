#!/bin/sh
# Records the control points that MetaPost chooses for the paths in curves.txt:
#   sh record.sh ../resources/org/hemwright/geometry/metapost.txt
# Needs mpost (Debian: texlive-metapost). A line a cubic: x y of start, both control points, end.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
mkdir -p "$(dirname "$1")"
answer=$(cd "$(dirname "$1")" && pwd)/$(basename "$1")
work=$(mktemp -d)
trap 'rm -r "$work"' EXIT
cd "$work"

# record NUMBERS FILTER: the curves whose names pass the filter, reckoned in a system of numbers
record() {
  {
    cat <<'PROGRAM'
def pair_of(expr z) = decimal xpart z & " " & decimal ypart z enddef;
def tell(expr name, p) =
  write "curve " & name to "told.txt";
  for t = 0 upto length p - 1:
    write pair_of(point t of p) & " " & pair_of(postcontrol t of p) & " "
      & pair_of(precontrol t + 1 of p) & " " & pair_of(point t + 1 of p) to "told.txt";
  endfor
enddef;
PROGRAM
    grep -v '^#' "$here/curves.txt" | $2 | sed -n 's/^\([a-z0-9_]*\): \(.*\)$/tell("\1", \2);/p'
    echo 'write EOF to "told.txt"; end'
  } > curves.mp
  mpost -numbersystem="$1" -interaction=nonstopmode curves.mp > mpost.out || { cat mpost.out; exit 1; }
  echo "# $(mpost --version | head -1), mpost -numbersystem=$1"
  cat told.txt
}

{
  record double 'grep -v ^coarse_'
  record scaled 'grep ^coarse_'
} > "$answer"
