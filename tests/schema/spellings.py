"""How values may be written: for each place in a survey, a body plan or rules what reader and
schema both take and both refuse. What only one of them can see (quotes, a number in a text that is
too large, words given twice) is not here but in tests/cases/bad/meaning."""

SURVEY = """survey: 1
body: two-door-saloon 1
"""
CAR = "car: {name: Wherry 1200}\n"
VISIT = "visit: {date: 2025-04-12}\n"
HEAD = SURVEY + CAR + VISIT + 'photos: {folder: photos, name: "IMG_{}.jpg"}\n'
ZONE = HEAD + "seen: {bare: 51-58}\nzones:\n  51:\n"
SPOT = ZONE + "    found:\n      - spot: rear end\n        rust: pitting\n        "
LINE = ZONE + "    found:\n      - rear end: @\n"

PLAN = """plan: 1
body: small-body
version: 2
title: Small body
construction: unitary
size: {length: 3000, width: 1400, height: 1300, wheelbase: 2000}
zones:
  11:
    name: scuttle
    role: skin
    joined: welded
    build: single
    runs: across
    sheet: 0.9
    drawn: {skin: {top: "M 600 -500 H 900 V 500 H 600 Z"}}
    span: {z: [880, 930]}
    stations: {middle: [750, 0, 900]}
mounts:
  - {what: towing eye, carries: towing, at: [750, 0, 900], on: [11]}
"""

READINGS = [".81", "0.82 mm", ".81 .78", "32 31 thou", "[.81, 0.78 mm]", "[.81 .78, .8]", "5.",
            "900 um", "900 µm", "[1]", "1mm", ".5  .6   mm", "0.8 MM", "32 Thou", "3/64 in",
            '3/64"', "1/32 3/64″", "18 SWG", "18 20 swg", "20 US", "[.81, 18 SWG]"]
NO_READINGS = [".81, .78", "two", "{a: 1}", "[]", "13", "0.8 yd", ".81 mm .78", "-.8", "~",
               "[.81, two]", "[[.81]]", ".inf", "true", "12.5", "mm", "1.2.3 mm", ". mm",
               "1e-1 mm", "0,81", "1_0 mm", "3/46 in", "3 /64 in", "18 gauge", "27 SWG",
               "18 SWG 20 SWG"]
DATES = ["2025-04-12", "2025-04", "2025", "2024-02-29", "1967-12-31"]
NO_DATES = ["12.4.2025", "2025-13", "2025-00", "2025-04-32", "1884", "2200-01", "20250412",
            "2025-4-12", "2025/04/12", "[2025]", "spring 2025"]


def survey_of(name):
    """A survey of the body plan in the file beside it."""
    return f"survey: 1\nbody: ./{name}.plan\n{CAR}{VISIT}"


def plan_with(old, new):
    assert old in PLAN, old
    return PLAN.replace(old, new)


def survey_places():
    return [
        ("built", SURVEY + "car: {name: Wherry, built: @}\n" + VISIT,
         ["1967", "1885"],
         ["1884", "2200", "67", "1967.5", "year", "[1967]"]),
        ("car name", SURVEY + "car: {name: @}\n" + VISIT,
         ["Wherry 1200", "1200", "12.50", '"yes"', "2025-04-12", "é" * 80],
         ["true", "~", '" "', "[a]", "é" * 81, '"a\\nb"']),
        ("odometer", SURVEY + "car: {name: Wherry, odometer: @}\n" + VISIT,
         ["61200 mi", "98500km", "0.5 km"],
         ["61200", "61200 miles", "mi", "-5 km", "61,200 mi", "[1 km]"]),
        ("date", SURVEY + CAR + "visit: {date: @}\n", DATES, NO_DATES),
        ("leave", SURVEY + CAR + "visit: {date: 2025-04-12, leave: @}\n",
         ["probe", "[carpets, probe]", "7", "[]"],
         ["{a: b}", "[[a]]", "~"]),
        ("gauge name", HEAD + "gauges: {metal: {name: @}}\n",
         ["thin probe 2", "7"],
         ["true", "~", "[a]", "é" * 81]),
        ("uncertainty", HEAD + "gauges: {metal: {uncertainty: @}}\n",
         ["0.05 mm", ".01", "2 thou"],
         ["0.05 0.06", "0", "2", "small"]),
        ("folder", SURVEY + CAR + VISIT + "photos: {folder: @}\n",
         ["photos", "my photos/2025", "a..b", "photos/"],
         ["/photos", "~/photos", "../photos", "a/../b", "c:photos", "a\\b", "[a]"]),
        ("photo name", SURVEY + CAR + VISIT + "photos: {name: @}\n",
         ['"IMG_{}.jpg"', '"{}.JPEG"', '"a {} b.jpeg"', '"IMG_{:04}.jpg"'],
         ["IMG.jpg", '"{}{}.jpg"', '"{}{:04}.jpg"', '"{:4}.jpg"', '"{:00}.jpg"', '"{}.png"', '"../{}.jpg"', '"/{}.jpg"', '"{}jpg"']),
        ("gap", HEAD + "gaps:\n  - {where: door, wheels: @}\n",
         ["4.5 mm", "0", ".125 in", "1/8 in", '1 1/8"', '1-1/8"'],
         ["201", "4.5 3.0", "wide", "-1", "1/3 in", "1/8/2 in"]),
        ("bare", HEAD + "seen: {bare: @}\n",
         ["51-58 61", "51", "[51-54, 55 56, 57]", "[]", "10"],
         ["51, 52", "51 - 58", "5", "99", "40", "51-", "{51: a}", "510", "51–58"]),
        ("part", HEAD + "seen: {part: @}\n",
         ["{13: 60 %}", "{51-54 61: 5%}", "{}"],
         ["{13: 60}", "{13: .6}", "{13: }", "13", "{131: 60 %}", "{13: most}", "[13]"]),
        ("hidden", HEAD + "seen: {hidden: @}\n",
         ["{71 72: carpet glued down}", '{71: "spare wheel, in place"}', "{71: 2}"],
         ["{71: }", "71", "{71: [a]}"]),
        ("zone seen", HEAD + "zones: {51: {seen: @}}\n",
         ["bare", "part 60 %", '"part, 60 %"', '"hidden, carpet glued down"', "hidden carpet",
          "{hidden: carpet}", "{part: 60 %}", "not-fitted", "tap"],
         ["part", "hidden", "bared", "bare 60 %", "{bare: 51}", "[bare]",
          "{part: 60 %, hidden: a}", "part most", "51"]),
        ("zone", HEAD + "zones: {@: {note: loose}}\n",
         ["51", "10"],
         ["9", "99", "40", "own-a", "own-A", "own-ab", "051"]),
        ("own zone", HEAD + "zones: {own-b: {name: tray, role: local, side: @}}\n",
         ["left", "centre"],
         ["Left", "nearside", "~"]),
        ("inside", ZONE + "    inside: @\n",
         ["scoped", "not-seen", "hidden", "part 40 %"],
         ["part", "scoped 40 %", "seen", "[scoped]"]),
        ("drains", ZONE + "    drains: @\n",
         ["open", "{front end: blocked}", "front end blocked, rear end open"],
         ["shut", "{}", "{front end: shut}", "front end shut", "[open]"]),
        ("tools", HEAD + "tools: @\n",
         ["gauge", "gauge scope", "[gauge, scope]"],
         ["spade", "[]", "[gauge, gauge]", "{gauge: 1}"]),
        ("reference", ZONE + "    reference: @\n", READINGS, NO_READINGS),
        ("sheet", ZONE + "    sheet: @\n",
         ["1.1", "1.1 mm", "20 SWG", "20 US", "20SWG", "40 thou", "20 swg"],
         ["20 gauge", "27 SWG", "25 US", "20 ga", "paper", "13", "[1.1]", "1.1 SWG"]),
        ("film", ZONE + "    film: @\n",
         ["140 155 900 um", "140", "[140, 155]", "0.1 mm", "0",
          "900-1600", "900–1600 um", "over 2000", "2000+", '">2000"', "[140, over 2000]",
          "140 900-1600 2000+ um", "600-2000+"],
         ["thin", "-1", "20001", "140, 155", "[]", "900-", "over", "over 900-1600",
          "900-1600-2000", "under 50"]),
        ("zone photos", ZONE + "    photos: @\n",
         ["14", "14 15", "[14, 15]", "details/lip.jpg", "14 a/b.JPG", "[my lip.jpeg, 3]",
          "999999999", "14, 15", "14-16", "[14-16, 20]", "14-16 20, a/b.jpg", "14,15"],
         ["lip", "lip.png", "[lip]", "-1", "1234567890", "/a.jpg", "../a.jpg", "a/../b.jpg", "~",
          "14.5", "{a: 1}", "a\\b.jpg", "14-", "14-15-16", "14 - 16", "14,"]),
        ("metal", SPOT + "metal: @\n",
         READINGS + ["0", "12"],
         NO_READINGS),
        ("size", SPOT + "size: @\n",
         ["180x60", "300x120 mm", "40", "40 mm", "1.5 x .75 in", "30×20", "30X20", "30*20",
          "180mm x 60mm", '3" x 1"', '1/2" x 3/4"', "4 1/2 x 3 in"],
         ["180x", "x60", "180x60x2", "180 60", "180 yd x 60 yd", "1/3 x 1 in", "large", "[180, 60]", "5001", "0",
          "-4"]),
        ("at", SPOT + "at: @\n",
         ["x 1150 z 200", "{x: 1150, z: -200}", "y -28.5 in", "{z: 20 cm}"],
         ["1150", "x", "x 1150, z 200", "{}", "{w: 1}", "{x: 10001}", "here", "[1, 2, 3]",
          "{x: far}"]),
        ("pits", SPOT + "pits: {each: 50x50, deepest: @}\n",
         [".2 .3 .25", "[.2, .3]"],
         ["deep", "[]", "13"]),
        ("also when", HEAD + "also:\n  - {what: tyres, when: @}\n",
         ["before-use", "next-survey", "at-once", "65000 mi"] + DATES,
         NO_DATES + ["soon"]),
        ("tyre code", HEAD + "also:\n  - {what: tyres, code: @}\n",
         ['"0301"', '"317"', '"5324"'],
         ["0301", '"5401"', '"0001"', '"03"', '"03010"', '"DOT 0301"', "301"]),
        ("price", HEAD + "price: {asked: @}\n",
         ["9500 EUR", ".5 GBP", "9500EUR"],
         ["9500", "9500 eur", "EUR 9500", "9500 €", "-1 EUR", "9,500 EUR"]),
        ("note", ZONE + "    note: @\n",
         ["loose", "7", '"no"', "a - b"],
         ['""', "~", "[a]", "true"]),
    ]


def line_places():
    return [
        ("finding", LINE,
         ["pitting", "none", "hole", "rust seam, hand firm, tap dull", "seam, firm, dull",
          "pitting,firm ,  180x60", "metal .81 .78 .84 mm", "scale, size 4 cm",
          "pitting, hole 14x9, 180x60", "crack 30", "stuffed foam", "probe goes-in",
          "magnet none, surface", "edge, photo 14 details/lip.jpg", "bleed, at y -72 cm",
          "acid, under the battery tray", "acid, at the back of the tray", "acid, near the café",
          "acid, dents in the outer skin", "acid, wet", "scale, 40", "Pitting, FIRM, Hole 20x20",
          "hole 20 15 8", "5 holes to 30", "pitting, behind the plate, firm"],
         ["40", "", "[pitting]", "{rust: pitting}", "true"]),
        ("spot's name", ZONE + "    found:\n      - @: pitting\n",
         ["rear end", "51", "true", "é" * 80],
         ["é" * 81]),
        ("repair", ZONE + "    repairs:\n      - @\n",
         ["filled", "let-in, seam-weld, 300x120, 2021-05, cut-out, sound",
          "plated-over, 2010, unknown", "kind let-in, now rusting",
          "lapped, date 2021, photo 14, tar over the edges", "{kind: treated}",
          "sound, let-in, size 40", "treated, at the garage", "let in, seam weld, by a friend, sound"],
         ["{joint: stitch}", "{kind: let-in, size: large}", "[let-in]", "2021"]),
    ]


def plan_places():
    return [
        ("plan", plan_with("plan: 1", "plan: @"),
         ["1"],
         ["2", "one", "[1]"]),
        ("plan name", plan_with("body: small-body", "body: @"),
         ["small-body", "x1"],
         ["Small", "small body", "ü", "[a]"]),
        ("plan version", plan_with("version: 2", "version: @"),
         ["1", "9999"],
         ["0", "10000", "2.1", "two"]),
        ("title", plan_with("title: Small body", "title: @"),
         ["Small body", "7", "true"],
         ['" "', "~", "[a]"]),
        ("length", plan_with("length: 3000", "length: @"),
         ["3000", "3000 mm", "3 m", "9999.5"],
         ["300000", "3000 yd", "long", "-3000", "[3000]"]),
        ("plan sheet", plan_with("sheet: 0.9", "sheet: @"),
         ["0.9", ".9 mm", "20 SWG", "10"],
         ["20 gauge", "20", ".inf", "0.2", "28 SWG", "[1]"]),
        ("job", plan_with("    span:", "    job: @\n    span:"),
         ["scuttle", "outer-sill", "other-part"], ["Scuttle", "outer sill", "sill", "[scuttle]", "1"]),
        ("plan area", plan_with("    span:", "    area: @\n    span:"),
         ["0.31 m2", "3100 cm2", "2 ft2", "0.31 M2"],
         ["0.31", "0.31 m²", "small", "[1 m2]"]),
        ("plan span", plan_with("[880, 930]", "@"),
         ["[880, 930]", "[88 cm, 930 mm]", "[900, 900]"],
         ["[880]", "[1, 2, 3]", "880", "{a: 1}", "[a, b]"]),
        ("path", plan_with('"M 600 -500 H 900 V 500 H 600 Z"', "@"),
         ['"M600-500H900V500H600z"', '"M 6e2 -500 L 900 -500 L 900 500 L 600,500 Z"'],
         ['""', '"L 1 1"', '"M 600 5OO"', "[1]", "none"]),
        ("station", plan_with("{middle: [750, 0, 900]}", "{@: [750, 0, 900]}"),
         ["middle", "7", "by the lock"],
         ['"a, b"', '"a: b"']),
        ("mount's place", plan_with("at: [750, 0, 900]", "at: @"),
         ["[750, 0, 900]", "[750 mm, -10, 90 cm]"],
         ["[750, 0]", "[750, 0, 900, 1]", "[a, b, c]", "750"]),
        ("mount's zones", plan_with("on: [11]", "on: @"),
         ["[11]"],
         ["11", "[sill]", "[9]", "[40]", "[[11]]"]),
        ("mirrored",
         plan_with("at: [750, 0, 900], on: [11]", "at: [750, -100, 900], on: [11], mirrored: @"),
         ["true", '"true"'],
         ["yes", "false", "1", "[true]"]),
        ("key of a plan", PLAN + "@: []\n",
         ["boxes"],
         ["box", "Boxes"]),
        ("right lines",
         PLAN + "lines:\n  left: [{weight: strong, path: M 0 200 L 1 1}]\n  right: @\n",
         ["{mirror: left}", "[]",
          "[{weight: ghost, path: M 0 0 L 5 5, sheet: skin, filled: paper}]"],
         ["{mirror: right}", "{}", "left", "[{weight: strong}]",
          "[{weight: bold, path: M 0 0 L 1 1}]"]),
    ]


def rules_places():
    return [
        ("rules", "rules: @\n",
         ["1"],
         ["2", "one", "~", '"1"']),
        ("rules' name", "rules: 1\nname: @\n",
         ["Stricter for salted roads", "7", "é" * 80],
         ["~", "[a]", '" "', "é" * 81]),
        ("constant of length", "rules: 1\nnear-radius: @\n",
         ["400", "400 mm", "40 cm", "16in", "200", "1000"],
         ["49", "1001", "400 yd", "wide", "-400", "~", "[400]", "40 %", "400 mm2"]),
        ("constant of film", "rules: 1\nfilm-heavy: @\n",
         ["900", "900 um", ".9 mm"],
         ["99", "900 microns", "thick"]),
        ("constant of share", "rules: 1\nrepair-limit: @\n",
         ["90 %", ".90", "80%"],
         ["90", "0.9 mm", "half", "-.9", "0,9"]),
        ("constant without unit", "rules: 1\nexponent: @\n",
         ["8", "8.5", "50"],
         ["51", "0", "8 mm", "8 %", "~", ".inf"]),
        ("key of rules", "rules: 1\n@: 400\n",
         ["near-radius"],
         ["near-raduis", "Near-radius", "near"]),
    ]


def table():
    """Kind of file, place, text with @ where the value goes, what both take, what both refuse."""
    for kind, places in (("survey", survey_places() + line_places()), ("body", plan_places()),
                         ("rules", rules_places())):
        for place, text, takes, refuses in places:
            yield kind, place, text, takes, refuses
