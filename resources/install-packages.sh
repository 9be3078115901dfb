#!/usr/bin/env bash
# Installs the Debian packages of packages.txt that are missing. As root, or through sudo.
set -euo pipefail
list="$(dirname "$(realpath "${BASH_SOURCE[0]}")")/packages.txt"

missing=()
while read -r package; do
  [[ -z $package || $package == \#* ]] && continue
  state=$(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null || true)
  [[ $state == installed ]] || missing+=("$package")
done <"$list"

if ((${#missing[@]} == 0)); then
  echo "All needed Debian packages are installed."
  exit 0
fi

as_root=()
if ((EUID != 0)); then
  if ! command -v sudo >/dev/null; then
    echo "These packages are missing: ${missing[*]}" >&2
    echo "Please run this script as root, or install sudo." >&2
    exit 1
  fi
  as_root=(sudo)
fi
echo "Installing ${#missing[@]} Debian packages: ${missing[*]}"
"${as_root[@]}" apt-get update -q
"${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends "${missing[@]}"
