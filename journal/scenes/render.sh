#!/usr/bin/env bash
# Renders every picture that is missing or older than its scene. Needs povray, ImageMagick and exiftool.
#   ./render.sh            what is missing or older        ./render.sh -f NAME...   these, whatever their age
#   ./render.sh -t DIR     quick small ones into DIR, all (or those named after DIR)
# Traced at SCALE per cent of the size (70 unless set) and enlarged; SCALE=100 is slower and crisper.
# The first line of a scene says: // format WIDTHxHEIGHT [blur NEAR-FAR] [turn ORIENTATION] [taken "DATE TIME"] [colours N]
# blur: sharp up to NEAR centimetres from the camera, soft from FAR on. turn: pixels are stored turned, with the EXIF orientation that puts them upright.
set -euo pipefail
cd "$(dirname "$0")"
work=$(mktemp -d); trap 'rm -rf "$work"' EXIT
scale=${SCALE:-70}; small=; force=; [ "${1:-}" = -t ] && { small=$2; mkdir -p "$small"; shift 2; }; [ "${1:-}" = -f ] && { force=1; shift; }
scenes=("$@"); [ $# -gt 0 ] || scenes=(*/*.pov)

trace() { # scene, width, height, output, further options
  local scene=$1 w=$2 h=$3 out=$4; shift 4
  nice -n 19 povray "+I$scene" +L. "+O$out" "+W$w" "+H$h" +WT1 -D "$@" >"$work/log" 2>&1 || { grep -v '^ *$' "$work/log" | tail -12; return 1; }
}
field() { sed -n "1s/.* $2 \"\\{0,1\\}\\([^ \"]*\\).*/\\1/p" "$1"; }

for scene in "${scenes[@]}"; do
  scene=${scene%.pov}.pov; build=${scene%%/*}; name=$(basename "$scene" .pov)
  read -r _ format size _ < "$scene"; w=${size%x*}; h=${size#*x}
  if [ -n "$small" ]; then
    trace "$scene" $((w / 4)) $((h / 4)) "$small/$build--$name.png" +A0.3 +R2 || echo "FAILED $scene"
    trace "$scene" $((w / 4)) $((h / 4)) "$work/x.png" Declare=Depth=1 >/dev/null 2>&1 || true
    grep -ah '^MARK' "$work/log" | sed "s|^|$name |" || true; continue
  fi
  out=../$build/photos/$name.$format
  [ -z "$force" ] && [ -e "$out" ] && [ ! "$scene" -nt "$out" ] && continue
  mkdir -p "../$build/photos"; started=$(date +%s)
  trace "$scene" $((w * scale / 100)) $((h * scale / 100)) "$work/traced.png" +A0.25 +R2 || { echo "FAILED $scene"; continue; }
  convert "$work/traced.png" -filter Lanczos -resize "${w}x${h}!" -unsharp 0x1+0.6+0.01 -sigmoidal-contrast 3.4x42% "$work/sharp.png"
  blur=$(field "$scene" blur); cp "$work/sharp.png" "$work/final.png"
  if [ -n "$blur" ]; then
    trace "$scene" $((w / 2)) $((h / 2)) "$work/depth.png" Declare=Depth=1 +FN16 File_Gamma=1.0 Quality=9 -A
    # The fog's value at distance d is 1 - e^(-d/100).
    level() { awk -v n="$1" -v f="$2" 'BEGIN { printf "%.3f%%,%.3f%%", 100*(1-exp(-n/100)), 100*(1-exp(-f/100)) }'; }
    near=${blur%-*}; far=${blur#*-}; mid=$(( (near + far) / 2 ))
    convert "$work/depth.png" -set colorspace sRGB -channel R -separate -resize "${w}x${h}!" "$work/d.png"
    convert "$work/d.png" -level "$(level "$near" "$mid")" -blur 0x2 "$work/m1.png"
    convert "$work/d.png" -level "$(level "$mid" "$far")" -blur 0x4 "$work/m2.png"
    convert "$work/sharp.png" \( +clone -blur 0x2.5 \) "$work/m1.png" -composite \( "$work/sharp.png" -blur 0x7 \) "$work/m2.png" -composite "$work/final.png"
  fi
  turn=$(field "$scene" turn)
  case "$turn" in 6) rotate=-90;; 8) rotate=90;; 3) rotate=180;; *) rotate=0;; esac
  convert "$work/final.png" -rotate "$rotate" +repage -strip "$work/stored.png"
  case $format in
    jpg) convert "$work/stored.png" -sampling-factor 4:2:0 -quality 82 "$out" ;;
    webp) convert "$work/stored.png" -quality 80 "$out" ;;
    png) colours=$(field "$scene" colours); convert "$work/stored.png" ${colours:+-dither FloydSteinberg -colors "$colours"} -define png:compression-level=9 "$out" ;;
  esac
  taken=$(sed -n '1s/.* taken "\([^"]*\)".*/\1/p' "$scene")
  # Invented: a device that does not exist and a place in the open sea, so that their removal can be tested.
  if [ -n "$taken" ]; then
    n=$(cksum <<< "$name" | cut -d' ' -f1)
    exiftool -q -q -m -overwrite_original "-EXIF:DateTimeOriginal=$taken" "-EXIF:CreateDate=$taken" "-EXIF:OffsetTimeOriginal=+00:00" \
      -EXIF:Make="Invented" -EXIF:Model="Pocket Camera Zero" -EXIF:SerialNumber="INVENTED-000$((n % 10))" -EXIF:OwnerName="Nobody At All" \
      -EXIF:GPSLatitude="50.0$((n % 89 + 10))" -EXIF:GPSLatitudeRef=N -EXIF:GPSLongitude="20.0$((n % 83 + 10))" -EXIF:GPSLongitudeRef=W ${turn:+-n -EXIF:Orientation=$turn} "$out"
  elif [ -n "$turn" ]; then exiftool -q -q -m -overwrite_original -n "-EXIF:Orientation=$turn" "$out"; fi
  echo "$out $(($(date +%s) - started)) s $(($(stat -c %s "$out") / 1024)) kB"
done
