"""A second reader of the issue log, from the text of RFC 6962 section 2.1 and the format notes of the log, standard library only.

Reads one JSON document on standard input, writes one on standard output:
  {"leaves": [hex ...], "inclusion": [[index, size] ...], "consistency": [[old, new] ...], "entry": {...}, "head": {...}}
"""
import hashlib
import json
import sys


def sha(data):
    return hashlib.sha256(data).digest()


def split(n):
    k = 1
    while k << 1 < n:
        k <<= 1
    return k


def mth(d):
    if not d:
        return sha(b"")
    if len(d) == 1:
        return sha(b"\x00" + d[0])
    k = split(len(d))
    return sha(b"\x01" + mth(d[:k]) + mth(d[k:]))


def path(m, d):
    if len(d) == 1:
        return []
    k = split(len(d))
    if m < k:
        return path(m, d[:k]) + [mth(d[k:])]
    return path(m - k, d[k:]) + [mth(d[:k])]


def subproof(m, d, whole):
    if m == len(d):
        return [] if whole else [mth(d)]
    k = split(len(d))
    if m <= k:
        return subproof(m, d[:k], whole) + [mth(d[k:])]
    return subproof(m - k, d[k:], False) + [mth(d[:k])]


def leaf(entry):
    opening = b"\x01" + bytes.fromhex(entry["salt"])
    for text in entry["texts"]:
        content = text.encode("utf-8")
        opening += len(content).to_bytes(2, "big") + content
    return b"\x01" + sha(opening)


def head(fields):
    size, root, at = fields["size"], fields["root"], fields["milliseconds"]
    return b"\x00\x01" + at.to_bytes(8, "big") + size.to_bytes(8, "big") + bytes.fromhex(root)


asked = json.load(sys.stdin)
leaves = [bytes.fromhex(text) for text in asked["leaves"]]
json.dump(
    {
        "roots": [mth(leaves[:size]).hex() for size in range(len(leaves) + 1)],
        "inclusion": [[h.hex() for h in path(m, leaves[:n])] for m, n in asked["inclusion"]],
        "consistency": [[h.hex() for h in subproof(m, leaves[:n], True)] for m, n in asked["consistency"]],
        "leaf": leaf(asked["entry"]).hex(),
        "head": head(asked["head"]).hex(),
    },
    sys.stdout,
)
