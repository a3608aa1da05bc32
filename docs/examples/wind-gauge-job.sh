#!/bin/sh
# Makes the job that docs/files-in.md takes measured curves into: by the API, as the lead of the demonstration.
# usage: wind-gauge-job.sh [http://127.0.0.1:4700]   prints the id of the job; run twice it makes nothing twice
set -eu
api="${1:-http://127.0.0.1:4700}/api/v1"
cookies=$(mktemp)
trap 'rm -f "$cookies"' EXIT

post() { curl -sS --fail-with-body -b "$cookies" -c "$cookies" -H 'content-type: application/json' -d @- "$api$1"; }
joint=0197f3c1-0000-7000-8000-000000000001
wrench=0197f3c1-0000-7000-8000-000000000002
job=0197f3c1-0000-7000-8000-000000000003

lead=$(curl -sS "$api/people" | jq -r '.[] | select(.name == "Ines Falk").id')
echo "{\"personId\": \"$lead\", \"pin\": \"2468\"}" | post /session >/dev/null

if ! curl -sS --fail -o /dev/null "$api/joints/$joint" 2>/dev/null; then
  post /joints >/dev/null <<JSON
{
  "id": "$joint",
  "content": {
    "name": "Lid of the wind gauge",
    "fastener": {
      "thread": "M4", "description": "self-forming screw 40 x 12", "lubricant": "dry", "reuse": "reusable",
      "prevailing": {"by": "thread-forming", "highestNm": 0.85}
    },
    "layout": {"kind": "circle", "count": 8, "diameterMm": 90, "firstAngleDeg": 0, "direction": "clockwise"},
    "stages": [
      {
        "kind": "torque",
        "torque": {
          "lowerNm": 1.2, "targetNm": 1.4, "upperNm": 1.6,
          "typed": {"form": "plus-minus", "target": "1.4", "plusMinus": "0.2", "unit": "N·m"}
        },
        "rounds": [{"share": 1, "order": {"method": "circular"}}]
      }
    ],
    "numbersSource": {"kind": "trial", "text": "window published with the curves"},
    "cautions": ["Plastic gives way: holds the lid of an instrument and nothing else."],
    "rework": {"rule": "loosen-and-repeat", "underContinues": true, "maximumAttempts": 3},
    "decisionRule": {"kind": "simple"},
    "torqueUnit": "N·m"
  }
}
JSON
  echo '{}' | post "/joints/$joint/release" >/dev/null
fi

post /toolbox/wrenches >/dev/null <<JSON
{
  "id": "$wrench", "name": "Screwdriver 4", "serial": "KH-004", "type": "I", "class": "C",
  "lowestNm": 0.2, "highestNm": 4, "resolutionNm": 0.001, "angleResolutionDeg": 0.25, "leverMm": 100,
  "connection": {"kind": "typed"},
  "calibration": {
    "calibratedOn": "2026-01-10", "dueOn": "2099-01-10", "certificate": "KH-C-0999", "by": "Kestrelhorn calibration bench (invented)",
    "maximumDeviationPercent": 1, "expandedUncertaintyPercent": 0.8
  }
}
JSON

post /jobs >/dev/null <<JSON
{
  "id": "$job",
  "title": "New lid on the wind gauge",
  "asset": {"id": "0197f3c1-0000-7000-8000-000000000004", "name": "Tower 5", "location": "Kestrelhorn line"},
  "joints": [{"jointId": "$joint", "revision": 1, "label": "Lid"}]
}
JSON

if [ "$(curl -sS "$api/jobs/$job" | jq '.entries | length')" = 1 ]; then
  echo "{\"command\": {\"kind\": \"take-tool\", \"wrenchId\": \"$wrench\", \"jointRefs\": [\"J1\"]}}" |
    post "/jobs/$job/commands" >/dev/null
fi
echo "$job"
