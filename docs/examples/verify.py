"""Verifies chain and traces of an exported record with Python's own library alone: python3 verify.py record.json"""
import hashlib
import json
import sys

text = open(sys.argv[1], encoding="utf-8").read()
decode = json.JSONDecoder().raw_decode
sha256 = lambda part: hashlib.sha256(part.encode()).hexdigest()

at, before, traced = len('{"entries":['), "0" * 64, {}
while text[at - 1] != "]":
    entry, end = decode(text, at)
    # The file is canonical: what was hashed stands in it letter by letter, but for the hash itself.
    if sha256(text[at:end].replace(f',"hash":"{entry["hash"]}"', "")) != entry["hash"] or entry["previousHash"] != before:
        sys.exit(f"entry {entry['seq']} is not what was recorded")
    if "trace" in entry["body"].get("pull", {}):
        traced[entry["id"]] = entry["body"]["pull"]["trace"]["sha256"]
    before, at = entry["hash"], end + 1

at = text.index('"traces":{') + len('"traces":{')
while text[at - 1] != "}":
    name, at = decode(text, at)
    trace, end = decode(text, at + 1)
    if sha256(text[at + 1 : end]) != traced.pop(name, None):
        sys.exit(f"trace {name} is not what was recorded")
    at = end + 1
print("a trace is missing" if traced else f"{entry['seq']} entries fit, the last hash is {before}")
