// A body plan as small as can be that has one of everything.
#pragma once

#include <string_view>

namespace tinworm::body {

inline constexpr std::string_view small_plan = R"(plan: 1
body: small-body
version: 2
title: Small body for tests
construction: unitary
size: {length: 3950, width: 1560 mm, height: 1390, wheelbase: 2400}
lines:
  left:
    - {weight: strong, path: "M -700 200 L 3250 200"}
    - {weight: light, sheet: skin, path: "M 0 900 L 400 900 L 400 1100 Z", filled: paper}
    - {weight: ghost, sheet: structure, path: "M 0 900 L 1 1"}
  right: {mirror: left}
  top:
    - {weight: medium, path: "M -690 -100 L -690 100"}
zones:
  20:
    name: front panel
    role: skin
    joined: bolted
    build: single
    runs: across
    sheet: 20 SWG
    drawn: {skin: {front: "M -500 300 L 500 300 L 500 500 L -500 500 Z"}}
    span: {x: [-600, -580]}
  51:
    name: outer sill
    also: rocker
    role: main
    joined: welded
    build: box
    runs: along
    sheet: 1.1
    area: 0.31 m2
    drawn:
      skin: {left: "M 420 130 L 1870 130 L 1870 300 L 420 300 Z"}
      structure:
        left: "M 420 130 L 1870 130 L 1870 300 L 420 300 Z"
        underneath: "M 420 -720 L 1870 -720 L 1870 -650 L 420 -650 Z"
    span: {y: [-725, -640]}
    stations: {front end: [610, -720, 210], rear end: [1610, -715, 210]}
    starts: bottom seam and both ends, from inside
    hides: [20, 53]
  52: {mirror: 51}
  53:
    name: inner sill
    role: main
    joined: welded
    build: layered
    runs: along
    sheet: 1.1 mm
    drawn: {structure: {left: "M 420 130 L 1870 130 L 1870 330 L 420 330 Z"}}
    span: {y: [-640, -560]}
  54: {mirror: 53}
mounts:
  - {what: front spring hanger, carries: suspension, at: [1510, -610, 320], on: [53, 20], mirrored: true}
  - {what: towing eye, carries: towing, at: [-590, 0, 320], on: [20]}
boxes:
  - name: left sill
    axis: along
    from: 420
    to: 1870
    points: {a: [-700, 130], b: [-700, 300], c: [-560, 300]}
    walls: [{path: a b c, zone: 51}, {path: c a, zone: 53}]
  - {name: right sill, mirror: left sill}
)";

}  // namespace tinworm::body
