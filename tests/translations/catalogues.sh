#!/usr/bin/env bash
# Compares every catalogue of texts with the code: each text of the code is in it and finished, it
# has no unused texts, and each translation has the same placeholders (%1, %n) as its text.
# Usage: catalogues.sh SOURCES LUPDATE ARGUMENTS…, to which "-ts CATALOGUE" is added. Exits with
# 77 if lupdate is missing.
set -euo pipefail

sources=$1
shift
# shellcheck source=/dev/null
source "$(dirname -- "${BASH_SOURCE[0]}")/../needs.sh"
needs "$1" python3
scratch=$(mktemp -d)
trap 'rm -rf -- "$scratch"' EXIT
cd -- "$sources"
for catalogue in resources/translations/holdband_*.ts; do
    cp -- "$catalogue" "$scratch"
    "$@" -ts "$scratch/${catalogue##*/}" 2>/dev/null
done
python3 - "$scratch"/*.ts <<'END'
import re
import sys
import xml.etree.ElementTree as tree

# Texts of core, of ui, and of the buttons that Qt names itself.
CONTEXTS = {"Phrase", "Words", "QPlatformTheme"}
wrong = []
texts = 0


def places(text):
    return set(re.findall(r"%(?:[1-9]|n)", text or ""))


for path in sys.argv[1:]:
    for context in tree.parse(path).getroot().findall("context"):
        name = context.findtext("name")
        if name not in CONTEXTS:
            wrong.append(f"{path.rsplit('/', 1)[-1]}: the program asks for no text of {name}")
        for message in context.findall("message"):
            texts += 1
            source = message.findtext("source")
            other = message.findtext("comment") or ""
            translation = message.find("translation")
            state = translation.get("type")
            forms = [form.text for form in translation.findall("numerusform")]
            counted = message.get("numerus") == "yes"
            where = f"{path.rsplit('/', 1)[-1]}: {source!r}"
            if state == "unfinished":
                wrong.append(f"{where} is not translated")
            elif state:
                wrong.append(f"{where} is in no source any more")
            elif counted and (len(forms) < 2 or not all(forms)):
                wrong.append(f"{where} lacks a plural form")
            elif counted and places(source) != places(forms[-1]):
                wrong.append(f"{where} has other places in {forms[-1]!r}")
            elif counted and not places(forms[0]) <= places(source) | places(other):
                wrong.append(f"{where} has other places in {forms[0]!r}")
            elif not counted and places(source) != places(translation.text):
                wrong.append(f"{where} has other places in {translation.text!r}")
            elif not counted and source.count("&") != translation.text.count("&"):
                wrong.append(f"{where} underlines another number of letters")
if texts < 2000:
    wrong.append(f"only {texts} texts were found")
print("\n".join(wrong) or f"{texts} texts are complete")
sys.exit(1 if wrong else 0)
END
