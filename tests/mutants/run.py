"""Changes one comparison, limit or unit factor at a time and looks whether a test notices.

usage: run.py WORK_FOLDER [--seconds N] [--only checks|units] [--first N] [--tests PROGRAM...]

Works on a copy of the sources in WORK_FOLDER. Every mutant changes one place: a comparison of core/checks, < to <=, one
of its limits by 1 %, or a factor of core/units by 1 %. One of the tests of its folder must fail. Those of the rules lie
asleep in one build and are woken one by one; where a source does not compile so, and for units, each is built.
Mutants are taken in an order that mixes the files, always the same one. Prints each that survives, and at the end how
many were killed; WORK_FOLDER/results.txt holds them all and lets a later run go on where this one stopped.
"""

import argparse
import hashlib
import os
import pathlib
import re
import shutil
import subprocess
import sys
import time
import typing

ROOT = pathlib.Path(__file__).resolve().parents[2]
TURNED = {" < ": " <= ", " <= ": " < ", " > ": " >= ", " >= ": " > "}
WORDS = {" < ": "less", " <= ": "lessOrEqual", " > ": "more", " >= ": "moreOrEqual"}
VARIABLE = re.compile(r"\bconstexpr\b(?=[^()]*\bk[A-Z]\w*(\[\])?\s*[={])")
NUMBER = re.compile(r"(?<![\w.\"'])(\d[\d']*\.?\d*(?:e[-+]?\d+)?)(?![\w.\"'])")
TESTS = {"checks": ["core_checks_test"], "units": ["core_units_test", "handbook_units_test", "handbook_test"]}
SELDOM = {"handbook_test"}  # takes long to build, and is asked for what survives the others alone


def code_of(line: str) -> str:
    """The line without its comment and what stands in quotes."""
    return re.sub(r'"(\\.|[^"\\])*"', lambda text: " " * len(text.group()), line).split("//")[0]


class Mutant(typing.NamedTuple):
    path: pathlib.Path
    folder: str
    number: int  # of the line, from 0
    start: int
    end: int
    new: str
    what: str

    def name(self) -> str:
        return f"{self.path.relative_to(ROOT)}:{self.number + 1}:{self.what}"

    def line(self, line: str) -> str:
        return line[: self.start] + self.new + line[self.end:]


def turned(code: str):
    for old, new in TURNED.items():
        at = code.find(old)
        while at >= 0:
            yield at, at + len(old), new, f"{at + 2}: {old.strip()} to {new.strip()}"
            at = code.find(old, at + 1)


def shifted(code: str):
    """Numbers of constants and of tables, 1 % up and down; whole ones below 100 by one."""
    for match in NUMBER.finditer(code):
        text = match.group(1).replace("'", "")
        value = float(text)
        for factor in (1.01, 0.99) if value else ():
            whole = "." not in text and "e" not in text
            if whole and value < 100:
                other = str(int(value) + (1 if factor > 1 else -1))
            else:
                other = repr(round(value * factor) if whole else value * factor)
            yield match.start(1), match.end(1), other, f"{match.start(1) + 1}: {text} to {other}"


def mutants_of(path: pathlib.Path, folder: str):
    for number, line in enumerate(path.read_text(encoding="utf-8").splitlines()):
        code = code_of(line)
        if line.startswith("#") or "assert" in code or re.match(r"\s*for \(", code):
            continue
        if folder == "checks":
            yield from (Mutant(path, folder, number, *change) for change in turned(code))
        if "KindRow" not in code and ("constexpr" in code or folder == "units" and "{" in code):
            yield from (Mutant(path, folder, number, *change) for change in shifted(code))


def all_mutants(only: str | None):
    found = []
    for folder in ("checks", "units"):
        if only in (None, folder):
            names = sorted((ROOT / "core" / folder).glob("*.cpp" if folder == "checks" else "unit_table.cpp"))
            for path in names + ([ROOT / "core/units/constants.h"] if folder == "units" else []):
                found += mutants_of(path, folder)
    return sorted(found, key=lambda m: hashlib.sha256(m.name().encode()).hexdigest())


def asleep(path: pathlib.Path, numbered: dict[Mutant, int]) -> str:
    """The source with all these mutants in it, none of which changes anything until it is woken (asleep.h)."""
    lines = path.read_text(encoding="utf-8").splitlines()
    places: dict[tuple[int, int, int], list[Mutant]] = {}
    for mutant in numbered:
        places.setdefault((mutant.number, mutant.start, mutant.end), []).append(mutant)
    for (number, start, end), here in sorted(places.items(), reverse=True):
        line = lines[number]
        if line[start:end] in TURNED:
            new = f" < mutants::{WORDS[line[start:end]]}({numbered[here[0]]}) > "
        else:
            new = "mutants::number(" + ", ".join([line[start:end]] + [f"{numbered[m]}, {m.new}" for m in here]) + ")"
        lines[number] = line[:start] + new + line[end:]
    if any(line_of(m) not in TURNED for m in numbered):
        lines = [VARIABLE.sub("const", line.replace("static constexpr", "static inline constexpr")) for line in lines]
    return '#include "tests/mutants/asleep.h"\n' + "\n".join(lines) + "\n"


def line_of(mutant: Mutant) -> str:
    """What the mutant takes the place of."""
    return mutant.path.read_text(encoding="utf-8").splitlines()[mutant.number][mutant.start:mutant.end]


class Workshop:
    def __init__(self, folder: pathlib.Path):
        self.source = folder / "source"
        self.build = self.source / "build" / "mutants"  # as deep as any other and with the presets' flags: the compiler cache knows the objects
        folder.mkdir(parents=True, exist_ok=True)
        listed = subprocess.run(["git", "ls-files", "-z"], cwd=ROOT, capture_output=True, check=True).stdout.decode()
        for name in filter(None, listed.split("\0")):
            self.restore(name)
        subprocess.run(["cmake", "-S", self.source, "-B", self.build, "-G", "Ninja", "-DCMAKE_BUILD_TYPE=RelWithDebInfo",
                        "-DCMAKE_CXX_FLAGS_RELWITHDEBINFO=-O2 -g1 -DNDEBUG", "-DCMAKE_CXX_COMPILER_LAUNCHER=ccache",
                        "-DPUMPWRIGHT_APP=OFF"],
                       check=True, stdout=subprocess.DEVNULL)

    def restore(self, name: str):
        old, new = ROOT / name, self.source / name
        if not new.exists() or new.read_bytes() != old.read_bytes():
            new.parent.mkdir(parents=True, exist_ok=True)
            shutil.copyfile(old, new)
            shutil.copymode(old, new)

    def builds(self, tests: list[str]) -> bool:
        made = subprocess.run(["ninja", "-C", self.build, *tests], capture_output=True, text=True)
        return made.returncode == 0

    def passes(self, test: str, words: list[str], awake: int = -1) -> bool:
        program = next(self.build.glob(f"tests/**/{test}"))
        own = {"LOCPATH": str(self.build / "tests" / "locales"), "PUMPWRIGHT_MUTANT": str(awake)}
        try:
            made = subprocess.run([program, "--abort", *words], cwd=self.source, capture_output=True, timeout=300,
                                  env={**os.environ, **own})
            return made.returncode == 0
        except subprocess.TimeoutExpired:
            return False

    def lays_asleep(self, mutants: list[Mutant]) -> dict[Mutant, int]:
        """One build with all mutants of the rules; of a file that does not compile so, with its comparisons alone."""
        numbered = {m: number for number, m in enumerate(mutants) if m.folder == "checks"}
        paths = sorted({m.path for m in numbered})
        with (self.source / "core/checks/CMakeLists.txt").open("a") as file:
            file.write(f"set_source_files_properties({' '.join(path.name for path in paths)} PROPERTIES\n"
                       "    COMPILE_OPTIONS -O0)\n")
        for _ in range(3):
            for path in paths:
                self.write(path, asleep(path, {m: n for m, n in numbered.items() if m.path == path}))
            made = subprocess.run(["ninja", "-k", "0", "-C", self.build, *TESTS["checks"]], capture_output=True, text=True)
            failed = set(re.findall(r"^FAILED: core/checks/\S*/(\w+\.cpp)\.o", made.stdout, re.MULTILINE))
            if made.returncode == 0:
                return numbered
            left = {m: n for m, n in numbered.items() if m.path.name not in failed or line_of(m) in TURNED}
            if len(left) == len(numbered):  # not its limits then
                left = {m: n for m, n in numbered.items() if m.path.name not in failed}
            numbered = left
            for path in {path for path in paths if path not in {m.path for m in numbered}}:
                self.restore(str(path.relative_to(ROOT)))
                paths.remove(path)
        raise SystemExit("the sources do not build with their mutants asleep:\n" + made.stdout)

    def write(self, path: pathlib.Path, text: str):
        new = self.source / path.relative_to(ROOT)
        if new.read_text(encoding="utf-8") != text:
            new.write_text(text, encoding="utf-8")

    def judge(self, mutant: Mutant, awake: int | None) -> str:
        """`awake` is its number where it lies asleep in the program; without one it is built."""
        if awake is not None:
            return "survived" if self.passes_all(mutant, TESTS[mutant.folder][0], awake) else "killed"
        name = str(mutant.path.relative_to(ROOT))
        lines = mutant.path.read_text(encoding="utf-8").splitlines(keepends=True)
        lines[mutant.number] = mutant.line(lines[mutant.number])
        self.write(mutant.path, "".join(lines))
        try:
            for test in TESTS[mutant.folder]:
                if not self.builds([test]):
                    return "does not compile"
                if not self.passes_all(mutant, test):
                    return "killed"
            return "survived"
        finally:
            self.restore(name)

    def passes_all(self, mutant: Mutant, test: str, awake: int = -1) -> bool:
        rule = f"[{mutant.path.stem.replace('_', '-')}]"  # its own tests first, they are quick
        return (mutant.folder != "checks" or self.passes(test, [rule], awake)) and self.passes(test, [], awake)


def main() -> int:
    options = argparse.ArgumentParser()
    options.add_argument("work", type=pathlib.Path)
    options.add_argument("--seconds", type=float, default=1e9)
    options.add_argument("--only", choices=["checks", "units"])
    options.add_argument("--first", type=int, default=10**9)
    options.add_argument("--tests", nargs="*", help="instead of all that may notice; what survives them is not yet judged")
    given = options.parse_args()
    if given.tests:
        TESTS.update({folder: [test for test in tests if test in given.tests] for folder, tests in TESTS.items()})
    shop = Workshop(given.work.resolve())
    mutants = all_mutants(given.only)[: given.first]
    numbered = shop.lays_asleep(mutants) if given.only != "units" else {}
    wanted = sorted({test for folder, tests in TESTS.items() for test in tests if given.only in (None, folder)} - SELDOM)
    if not shop.builds(wanted) or not all(shop.passes(test, []) for test in wanted):
        print("the tests do not pass without a mutant")
        return 2
    results = given.work / ("results.txt" if not given.tests else "results-of-some-tests.txt")
    judged = dict(line.split("\t") for line in results.read_text().splitlines()) if results.exists() else {}
    end = time.monotonic() + given.seconds
    for mutant in sorted(mutants, key=lambda m: m not in numbered):  # those that need no build first
        name = mutant.name()
        if name not in judged and time.monotonic() < end:
            judged[name] = shop.judge(mutant, numbered.get(mutant))
            with results.open("a") as file:
                file.write(f"{name}\t{judged[name]}\n")
            if judged[name] == "survived":
                print(f"survived: {name}", flush=True)
    outcomes = [judged[m.name()] for m in mutants if m.name() in judged]
    killed, survived = outcomes.count("killed"), outcomes.count("survived")
    print(f"{len(mutants)} mutants, {len(outcomes)} tried: {killed} killed, {survived} survived, "
          f"{outcomes.count('does not compile')} did not compile")
    return 0 if survived == 0 else 1


if __name__ == "__main__":
    sys.exit(main())
