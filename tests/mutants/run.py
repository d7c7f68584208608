"""Changes one comparison, limit or unit factor at a time and looks whether a test notices.

usage: run.py WORK_FOLDER [--seconds N] [--only checks|units] [--first N] [--tests PROGRAM...]

Works on a copy of the sources in WORK_FOLDER. Every mutant changes one place: a comparison of core/checks, < to <=, one
of its limits by 1 %, or a factor of core/units by 1 %. It is built with the tests of its folder, one of which must fail.
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

ROOT = pathlib.Path(__file__).resolve().parents[2]
TURNED = {" < ": " <= ", " <= ": " < ", " > ": " >= ", " >= ": " > "}
NUMBER = re.compile(r"(?<![\w.\"'])(\d[\d']*\.?\d*(?:e[-+]?\d+)?)(?![\w.\"'])")
TESTS = {"checks": ["core_checks_test"], "units": ["core_units_test", "handbook_units_test", "handbook_test"]}
SELDOM = {"handbook_test"}  # takes long to build, and is asked for what survives the others alone


def code_of(line: str) -> str:
    """The line without its comment and what stands in quotes."""
    return re.sub(r'"(\\.|[^"\\])*"', lambda text: " " * len(text.group()), line).split("//")[0]


def turned(line: str, code: str):
    for old, new in TURNED.items():
        at = code.find(old)
        while at >= 0:
            yield line[:at] + new + line[at + len(old):], f"{at + 2}: {old.strip()} to {new.strip()}"
            at = code.find(old, at + 1)


def shifted(line: str, code: str):
    """Numbers of constants and of tables, 1 % up and down; whole ones below 10 by one."""
    for match in NUMBER.finditer(code):
        text = match.group(1).replace("'", "")
        value = float(text)
        for factor in (1.01, 0.99):
            if value == 0:
                continue
            whole = "." not in text and "e" not in text
            if whole and value < 100:
                other = str(int(value) + (1 if factor > 1 else -1))
            else:
                other = repr(round(value * factor) if whole else value * factor)
            yield line[: match.start(1)] + other + line[match.end(1):], f"{match.start(1) + 1}: {text} to {other}"


def mutants_of(path: pathlib.Path, folder: str):
    for number, line in enumerate(path.read_text(encoding="utf-8").splitlines()):
        code = code_of(line)
        if line.startswith("#") or "assert" in code or re.match(r"\s*for \(", code):
            continue
        if folder == "checks":
            yield from ((path, folder, number, new, what) for new, what in turned(line, code))
        if "KindRow" not in code and ("constexpr" in code or folder == "units" and "{" in code):
            yield from ((path, folder, number, new, what) for new, what in shifted(line, code))


def all_mutants(only: str | None):
    found = []
    for folder in ("checks", "units"):
        if only in (None, folder):
            names = sorted((ROOT / "core" / folder).glob("*.cpp" if folder == "checks" else "unit_table.cpp"))
            for path in names + ([ROOT / "core/units/constants.h"] if folder == "units" else []):
                found += mutants_of(path, folder)
    return sorted(found, key=lambda m: hashlib.sha256(name_of(m).encode()).hexdigest())


def name_of(mutant) -> str:
    path, _, number, _, what = mutant
    return f"{path.relative_to(ROOT)}:{number + 1}:{what}"


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

    def passes(self, test: str, words: list[str]) -> bool:
        program = next(self.build.glob(f"tests/**/{test}"))
        try:
            made = subprocess.run([program, "--abort", *words], cwd=self.source, capture_output=True, timeout=300,
                                  env={**os.environ, "LOCPATH": str(self.build / "tests" / "locales")})
            return made.returncode == 0
        except subprocess.TimeoutExpired:
            return False

    def judge(self, mutant) -> str:
        path, folder, number, new, _ = mutant
        name = str(path.relative_to(ROOT))
        lines = path.read_text(encoding="utf-8").splitlines(keepends=True)
        lines[number] = new + "\n"
        (self.source / name).write_text("".join(lines), encoding="utf-8")
        rule = f"[{path.stem.replace('_', '-')}]"  # its own tests first, they are quick
        try:
            for test in TESTS[folder]:
                if not self.builds([test]):
                    return "does not compile"
                if folder == "checks" and not self.passes(test, [rule]) or not self.passes(test, []):
                    return "killed"
            return "survived"
        finally:
            self.restore(name)


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
    wanted = sorted({test for folder, tests in TESTS.items() for test in tests if given.only in (None, folder)} - SELDOM)
    if not shop.builds(wanted) or not all(shop.passes(test, []) for test in wanted):
        print("the tests do not pass without a mutant")
        return 2
    results = given.work / ("results.txt" if not given.tests else "results-of-some-tests.txt")
    judged = dict(line.split("\t") for line in results.read_text().splitlines()) if results.exists() else {}
    end = time.monotonic() + given.seconds
    for mutant in mutants:
        name = name_of(mutant)
        if name not in judged and time.monotonic() < end:
            judged[name] = shop.judge(mutant)
            with results.open("a") as file:
                file.write(f"{name}\t{judged[name]}\n")
            if judged[name] == "survived":
                print(f"survived: {name}", flush=True)
    outcomes = [judged[name_of(mutant)] for mutant in mutants if name_of(mutant) in judged]
    killed, survived = outcomes.count("killed"), outcomes.count("survived")
    print(f"{len(mutants)} mutants, {len(outcomes)} tried: {killed} killed, {survived} survived, "
          f"{outcomes.count('does not compile')} did not compile")
    return 0 if survived == 0 else 1


if __name__ == "__main__":
    sys.exit(main())
