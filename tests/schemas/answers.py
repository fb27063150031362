#!/usr/bin/env python3
"""Checks the JSON that the program prints and reads with its own JSON Schemas.

Usage: answers.py HOLDBAND SOURCES
"""
import copy
import json
import math
import os
import pathlib
import re
import subprocess
import sys
import tempfile
import unittest

from jsonschema import Draft202012Validator

HOLDBAND = os.path.abspath(sys.argv[1])
SOURCES = pathlib.Path(sys.argv[2]).resolve()
SCHEMAS = SOURCES / "resources" / "json-schema"
EVERY_KEY = SOURCES / "tests" / "schemas" / "every_key.json"
SAMPLE = SOURCES / "sample-data" / "spring-trials.json"
NAMES = ("verdict", "energy", "compare", "forecast", "batches", "description")

# No currency, no price, no ambient sensor, no accuracy; a ramp; a batch without readings.
BARE = {
    "holdband": 1,
    "setups": [{"name": "Loop"}, {"name": "Cabinet"}],
    "sensors": [{"name": "Beer", "reads": "beer"}, {"name": "Other", "reads": "beer"}],
    "batches": [
        {"name": "Open", "setup": "Loop", "pitched": "2026-03-01 00:00", "beer_sensor": "Beer",
         "tolerance_c": 1, "schedule": [{"stage": "Hold", "target_c": 20, "hours": 24},
                                        {"stage": "Rise", "kind": "ramp", "target_c": 22,
                                         "hours": 24},
                                        {"stage": "Rest", "target_c": 22}]},
        {"name": "Ended", "setup": "Cabinet", "pitched": "2026-03-01 00:00",
         "ended": "2026-03-04 00:00", "beer_sensor": "Other", "tolerance_c": 1,
         "causes": [{"from": "2026-03-01 02:00", "to": "2026-03-01 04:00", "side": "above",
                     "cause": "lid open", "note": "a sample"}],
         "schedule": [{"stage": "Hold", "target_c": 20, "hours": 24},
                      {"stage": "Rest", "target_c": 22}]}],
    "files": [{"file": "beer.csv", "columns": {"Other": "Other (C)"}}],
}
# A crash in progress: 18 °C, then 2 + 16·e^(-0.2 t) °C, read each 15 min for nine hours.
CRASH = {
    "holdband": 1, "setups": [{"name": "Loop"}], "sensors": [{"name": "Beer", "reads": "beer"}],
    "batches": [{"name": "Cold", "setup": "Loop", "pitched": "2026-03-01 00:00",
                 "beer_sensor": "Beer", "tolerance_c": 1,
                 "schedule": [{"stage": "Primary", "target_c": 18, "hours": 1},
                              {"stage": "Crash", "target_c": 2}]}],
    "files": [{"file": "crash.csv", "columns": {"Beer": "Beer (C)"}}],
}
CRASH_LOG = "Time,Beer (C)\n2026-03-01 00:30,18\n" + "".join(
    f"2026-03-01 {1 + i // 4:02}:{i % 4 * 15:02},{2 + 16 * math.exp(-0.05 * i)}\n"
    for i in range(37))
BARE_LOG = "Time,Other (C)\n" + "".join(
    f"2026-03-01 {hour:02}:00,{20 if hour < 2 or hour > 4 else 23}\n" for hour in range(12))


def schema_of(name):
    return json.loads((SCHEMAS / f"{name}.json").read_text(encoding="utf-8"))


def objects_of(schema):
    """Every object with its own keys that the schema describes."""
    if isinstance(schema, dict):
        if isinstance(schema.get("properties"), dict) and schema.get("type") == "object":
            yield schema
        for value in schema.values():
            yield from objects_of(value)
    elif isinstance(schema, list):
        for value in schema:
            yield from objects_of(value)


def objects_within(value):
    """Every object of an answer."""
    if isinstance(value, dict):
        yield value
        for each in value.values():
            yield from objects_within(each)
    elif isinstance(value, list):
        for each in value:
            yield from objects_within(each)


class Schemas(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.scratch = tempfile.TemporaryDirectory()
        cls.folder = pathlib.Path(cls.scratch.name)
        (cls.folder / "bare.json").write_text(json.dumps(BARE), encoding="utf-8")
        (cls.folder / "beer.csv").write_text(BARE_LOG, encoding="utf-8")
        (cls.folder / "crash.json").write_text(json.dumps(CRASH), encoding="utf-8")
        (cls.folder / "crash.csv").write_text(CRASH_LOG, encoding="utf-8")
        cls.run_program("load", "crash.holdband", "crash.json")
        cls.run_program("load", "sample.holdband", str(SAMPLE))
        cls.run_program("load", "bare.holdband", "bare.json")

    @classmethod
    def tearDownClass(cls):
        cls.scratch.cleanup()

    @classmethod
    def run_program(cls, *arguments):
        environment = dict(os.environ, XDG_CONFIG_HOME=str(cls.folder / "config"))
        done = subprocess.run([HOLDBAND, *arguments], cwd=cls.folder, env=environment,
                              stdout=subprocess.PIPE, stderr=subprocess.PIPE, encoding="utf-8")
        if done.returncode != 0:
            raise AssertionError(f"{arguments}: status {done.returncode}: {done.stderr}")
        return done.stdout

    def assert_fits(self, name, value):
        errors = sorted(Draft202012Validator(schema_of(name)).iter_errors(value), key=str)
        self.assertEqual([f"{list(e.absolute_path)}: {e.message}" for e in errors], [], name)

    def answer(self, *arguments):
        value = json.loads(self.run_program(*arguments, "--json"))
        self.assert_fits(arguments[0], value)
        return value

    def test_are_sound_and_describe_every_key(self):
        for name in NAMES:
            schema = schema_of(name)
            Draft202012Validator.check_schema(schema)
            objects = list(objects_of(schema))
            self.assertTrue(objects)
            for each in objects:
                self.assertIs(each.get("additionalProperties"), False, f"{name}: {each}")
                for key, value in each["properties"].items():
                    self.assertRegex(value.get("description", ""), r"\w.*\.$", f"{name}: {key}")

    def test_name_the_unit_of_every_quantity(self):
        units = {"_c": "K|°C", "_f": "°F", "_h": r"\bh\b", "_w": r"\bW\b", "_kwh": "kWh",
                 "_min": "min", "_ch": "K·h", "_l": "L", "_gal": "gallons", "_pct": "%"}
        for name in NAMES:
            for each in objects_of(schema_of(name)):
                for key, value in each["properties"].items():
                    for suffix, unit in units.items():
                        if key.endswith(suffix):
                            text = value["description"]
                            same = text.startswith("The same, ")
                            self.assertRegex(text, unit, f"{name}: {key}")
                            self.assertTrue(same or value.get("$ref") or "type" in value)

    def test_are_what_the_program_prints(self):
        for name in NAMES:
            printed = self.run_program("schema", name)
            self.assertEqual(printed, (SCHEMAS / f"{name}.json").read_text(encoding="utf-8"))

    def test_answers_of_every_batch_fit(self):
        for logbook in ("sample.holdband", "bare.holdband"):
            batches = self.answer("batches", logbook)
            self.assertGreaterEqual(len(batches), 2)
            for batch in batches:
                verdict = self.answer("verdict", logbook, batch["name"])
                energy = self.answer("energy", logbook, batch["name"])
                self.assertEqual(verdict["holdband"], 1)
                self.assertEqual(energy["holdband"], 1)
                money = "USD" if logbook == "sample.holdband" else None
                self.assertEqual(energy["currency"], money)

    def test_every_form_of_an_excursion_occurs(self):
        stages = self.answer("verdict", "bare.holdband", "Ended")["stages"]
        found = [each for stage in stages for each in stage["excursions"]]
        self.assertEqual([each["cause"] for each in found], ["lid open"])
        self.assertEqual(self.answer("verdict", "bare.holdband", "Open")["coverage"], None)

    def test_a_crash_in_progress_fits(self):
        arrival = self.answer("verdict", "crash.holdband", "Cold")["arrival"]
        self.assertEqual((arrival["stage"], arrival["answer"]), ("Crash", "hours"))
        self.assertIsNone(self.answer("verdict", "bare.holdband", "Open")["arrival"])

    def test_comparisons_fit(self):
        of_batches = self.answer("compare", "sample.holdband", "Ale 2", "Ale 3")
        self.assertEqual((of_batches["holdband"], of_batches["currency"]), (1, "USD"))
        self.assertTrue(of_batches["ratio_curve"] and of_batches["notes"])
        of_setups = self.answer("compare", "sample.holdband", "Loop", "Cabinet")
        self.assertTrue(of_setups["each_batch"] and of_setups["idle"])
        self.answer("compare", "sample.holdband", "Lager 1", "Lager 2", "--from", "Crash")
        self.answer("compare", "sample.holdband", "Ale 1", "Saison 1")
        self.assertIsNone(self.answer("compare", "bare.holdband", "Open", "Ended")["currency"])

    def test_forecasts_fit(self):
        july = ("--room-from", "2026-07-01", "--room-to", "2026-08-01")
        both = self.answer("forecast", "sample.holdband", "--plan", "Ale", *july)
        self.assertEqual((both["holdband"], both["currency"], both["less"]), (1, "USD", "b"))
        self.assertTrue(both["setups"][0]["backtest"] and both["setups"][0]["assumed"])
        one = self.answer("forecast", "sample.holdband", "Loop", "--like", "Ale 2", "--room", "70")
        self.assertNotIn("less", one)
        none = self.answer("forecast", "bare.holdband", "--like", "Open", "--room", "20")
        self.assertEqual([each["kwh"] for each in none["setups"]], [None, None])
        self.assertIsNone(none["less"])

    def test_descriptions_fit(self):
        self.assert_fits("description", json.loads(SAMPLE.read_text(encoding="utf-8")))
        for logbook in ("sample", "bare"):
            self.run_program("export", f"{logbook}.holdband", f"{logbook}-export")
            exported = (self.folder / f"{logbook}-export" / "logbook.json").read_text("utf-8")
            self.assert_fits("description", json.loads(exported))

    def test_a_description_with_every_key_fits(self):
        value = json.loads(EVERY_KEY.read_text(encoding="utf-8"))
        self.assert_fits("description", value)
        described = {key for each in objects_of(schema_of("description"))
                     for key in each["properties"]}
        used = {key for each in objects_within(value) for key in each}
        self.assertEqual(described - used, {"reference_lift_f"}, "it can have one of two")

    def test_examples_of_the_help_fit_and_load(self):
        for number, page in enumerate(("description.md", "de/description.md")):
            text = (SOURCES / "resources" / "help" / page).read_text(encoding="utf-8")
            blocks = re.findall(r"^```json\n(.*?)^```$", text, re.M | re.S)
            self.assertEqual(len(blocks), 1, page)
            self.assert_fits("description", json.loads(blocks[0]))
            (self.folder / "example.json").write_text(blocks[0], encoding="utf-8")
            self.run_program("load", f"example-{number}.holdband", "example.json")

    def test_a_key_that_is_not_described_fails(self):
        for arguments in (("verdict", "sample.holdband", "Lager 2"),
                          ("energy", "sample.holdband", "Lager 2"),
                          ("compare", "sample.holdband", "Loop", "Cabinet"),
                          ("forecast", "sample.holdband", "--like", "Ale 2", "--room", "70")):
            value = self.answer(*arguments)
            validator = Draft202012Validator(schema_of(arguments[0]))
            shapes = set()
            for index, each in enumerate(objects_within(value)):
                shape = tuple(sorted(each))
                if shape in shapes:
                    continue
                shapes.add(shape)
                changed = copy.deepcopy(value)
                list(objects_within(changed))[index]["undescribed"] = 1
                self.assertFalse(validator.is_valid(changed), f"{arguments}: {shape}")
            self.assertGreaterEqual(len(shapes), 3)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
