"""Holds the JSON Schemas that the program prints against the files of the tests, with Debian's
python3-jsonschema, which shares nothing with our readers. YAML is read as editors read it.

  agreement.py PROGRAM

Prints a line for each disagreement, then counts; exit status 1 if there was any."""

import json
import pathlib
import re
import subprocess
import sys
import tempfile

import jsonschema

import core_yaml
import spellings

TOP = pathlib.Path(__file__).resolve().parents[2]
PROGRAM = pathlib.Path(sys.argv[1]).resolve()

GOOD = {
    "survey": ["tests/cases/good/*.yaml", "output-samples/*.yaml", "tests/verbs/files/good.yaml"],
    "body": ["panels/*.yaml", "tests/verbs/files/panels/*.yaml"],
    "rules": [],
}
BAD = {"survey": "tests/cases/bad/shape", "body": "tests/cases/bad/shape-body",
       "rules": "tests/cases/bad/shape-rules"}
READERS_OWN = {"survey": "tests/cases/bad/meaning", "body": "tests/cases/bad/meaning-body",
               "rules": "tests/cases/bad/meaning-rules"}
# good and bad files that must be there
LEAST = {"survey": (6, 150), "body": (2, 50), "rules": (0, 26)}

failures = []


def run(*arguments):
    return subprocess.run([PROGRAM, *arguments], capture_output=True, text=True, check=False)


def schema_of(kind):
    ended = run("schema", kind)
    if ended.returncode != 0 or ended.stderr:
        sys.exit(f"schema {kind}: status {ended.returncode}: {ended.stderr}")
    schema = json.loads(ended.stdout)
    jsonschema.Draft202012Validator.check_schema(schema)
    return schema


def refusal(schema, text):
    """What is wrong with a file by the schema; none if nothing is."""
    validator = jsonschema.Draft202012Validator(schema)
    try:
        error = next(validator.iter_errors(core_yaml.load(text)), None)
    except core_yaml.Mistake as mistake:
        return f"this is no YAML: {mistake}"
    return error and f"{'/'.join(map(str, error.absolute_path))}: {error.message[:150]}"


def each_part(part):
    yield part
    if isinstance(part, dict):
        part = list(part.values())
    for inner in part if isinstance(part, list) else ():
        yield from each_part(inner)


def check_dialect(kind, schema):
    """Patterns in ECMA-262 as browsers read it, with the flag u: no look-behind, no escape of a
    letter that has no meaning, no brace that stands for itself. All references lead somewhere."""
    patterns = 0
    for part in each_part(schema):
        if not isinstance(part, dict):
            continue
        found = [part["pattern"]] if isinstance(part.get("pattern"), str) else []
        if isinstance(part.get("patternProperties"), dict):
            found += part["patternProperties"]
        for pattern in found:
            patterns += 1
            bare = re.sub(r"\\[\\^$.*+?()\[\]{}|/nrt]|\{[0-9]+(?:,[0-9]*)?\}", "x", pattern)
            if re.search(r"\\|[{}]|\(\?<|\[\]|\[\^\]", bare):
                failures.append(f"{kind}: not every engine reads the pattern {pattern}")
        if "$ref" in part and part["$ref"].rpartition("/")[2] not in schema["$defs"]:
            failures.append(f"{kind}: {part['$ref']} leads nowhere")
    return patterns


def check_files(kind, schema):
    good = sorted(file for glob in GOOD[kind] for file in TOP.glob(glob))
    bad = sorted((TOP / BAD[kind]).glob("*.yaml"))
    taken = refused = 0
    for file in good:
        said = refusal(schema, file.read_text("utf-8"))
        taken += not said
        if said:
            failures.append(f"{file.relative_to(TOP)} is good, yet the schema says: {said}")
    for file in bad:
        said = refusal(schema, file.read_text("utf-8"))
        refused += bool(said)
        if not said:
            failures.append(f"{file.relative_to(TOP)} is bad, yet the schema takes it")
    if len(good) < LEAST[kind][0] or len(bad) < LEAST[kind][1]:
        failures.append(f"{kind}: files are missing: {len(good)} good, {len(bad)} bad")
    beyond = sum(refusal(schema, file.read_text("utf-8")) is None
                 for file in (TOP / READERS_OWN[kind]).glob("*.yaml"))
    print(f"{kind}: {beyond} bad files are for the reader alone")
    print(f"{kind}: {taken} of {len(good)} good files taken, "
          f"{refused} of {len(bad)} bad ones refused")


def verdicts(surveys):
    """What the reader makes of each: true where it takes the file."""
    with tempfile.TemporaryDirectory() as folder:
        for name, files in surveys.items():
            for ending, text in files.items():
                pathlib.Path(folder, name + ending).write_text(text, "utf-8")
        ended = run("check", "--format", "json", folder)
        read = {pathlib.Path(each["file"]).stem: not each["problems"]
                for each in map(json.loads, ended.stdout.splitlines())}
        for rules in pathlib.Path(folder).glob("*.rules"):
            survey = rules.with_suffix(".yaml")
            read[rules.stem] = run("check", survey, "--rules", rules).returncode == 0
    return read


def check_spellings(schemas):
    """Reader and schema take and refuse the same spellings of one value."""
    cases, surveys = [], {}
    for kind, place, text, takes, refuses in spellings.table():
        for value in takes + refuses:
            name = f"case-{len(cases):04}"
            written = text.replace("@", value)
            cases.append((name, kind, f"{place}: {value}", written, value in takes))
            surveys[name] = {"survey": {".yaml": written},
                             "body": {".yaml": spellings.survey_of(name), ".plan": written},
                             "rules": {".yaml": spellings.HEAD, ".rules": written}}[kind]
    read = verdicts(surveys)
    for name, kind, what, written, good in cases:
        said = refusal(schemas[kind], written)
        if read[name] != good:
            failures.append(f"{what}: the reader {'takes' if read[name] else 'refuses'} it")
        if (said is None) != good:
            failures.append(f"{what}: the schema {'takes it' if said is None else 'says ' + said}")
    return len(cases)


def main():
    core_yaml.check()
    schemas = {kind: schema_of(kind) for kind in ("survey", "body", "rules")}
    for kind, schema in schemas.items():
        print(f"{kind}: {check_dialect(kind, schema)} patterns")
    for kind in BAD:
        check_files(kind, schemas[kind])
    print(f"spellings: {check_spellings(schemas)}")
    print("\n".join(failures) or "agreed")
    return 1 if failures else 0


if __name__ == "__main__":
    sys.exit(main())
