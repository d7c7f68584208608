"""Brings the .ts files of core's texts up to date: update_core.py LUPDATE SOURCES TS...

lupdate finds what core marks with say() and words(); titles and notes of the catalogue come after them. It sorts the texts by the C++ class that they stand in; core's texts
are looked up by their English alone, so here they have one context.
"""

import json
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as xml
from pathlib import Path
from xml.sax.saxutils import escape

CONTEXT = "core"
CATALOGUE = Path(__file__).parent.parent / "catalogue" / "parts.json"


def found(lupdate, sources):
    with tempfile.TemporaryDirectory() as folder:
        ts = Path(folder) / "found.ts"
        command = [lupdate, sources, "-I", ".", "-locations", "none", "-silent", "-tr-function-alias",
                   "tr+=say,QT_TR_NOOP+=words", "-ts", ts]
        subprocess.run(command, check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        texts = [message.find("source").text for message in xml.parse(ts).iter("message")]
    return list(dict.fromkeys(texts))


def catalogue():
    entries = json.loads(CATALOGUE.read_text(encoding="utf-8"))["entries"]
    return [entry[key] for key in ("title", "note") for entry in entries if entry.get(key)]


def finished(ts):
    if not ts.exists():
        return {}
    messages = xml.parse(ts).iter("message")
    return {m.find("source").text: m.find("translation").text for m in messages if "type" not in m.find("translation").attrib}


def write(ts, language, texts, translations):
    lines = ['<?xml version="1.0" encoding="utf-8"?>', "<!DOCTYPE TS>",
             f'<TS version="2.1" language="{language}" sourcelanguage="en">', "<context>", f"    <name>{CONTEXT}</name>"]
    for text in texts:
        translation = translations.get(text)
        mark = "" if translation else ' type="unfinished"'
        lines += ["    <message>", f"        <source>{escape(text)}</source>",
                  f"        <translation{mark}>{escape(translation or '')}</translation>", "    </message>"]
    ts.write_text("\n".join(lines + ["</context>", "</TS>", ""]), encoding="utf-8")


def main():
    lupdate, sources, *files = sys.argv[1:]
    texts = list(dict.fromkeys(found(lupdate, sources) + catalogue()))
    for file in map(Path, files):
        translations = finished(file)
        write(file, file.stem.split("_")[-1], texts, translations)
        missing = sum(text not in translations for text in texts)
        print(f"{file.name}: {len(texts)} texts, {missing} to be translated")


main()
