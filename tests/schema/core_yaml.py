"""Reads YAML by the core schema of YAML 1.2 (section 10.3), as editors do: PyYAML's own is 1.1's,
where `on` is true, 1:30 a number and 2025-04-12 a day. Keys stay texts."""

import re

import yaml


Mistake = yaml.YAMLError


class Loader(yaml.SafeLoader):
    yaml_implicit_resolvers = {}

    def construct_mapping(self, node, deep=False):
        return {key.value: self.construct_object(value, deep=True) for key, value in node.value}

    def construct_yaml_map(self, node):
        return self.construct_mapping(node)


def whole_number(loader, node):
    text = node.value
    return int(text[2:], {"0o": 8, "0x": 16}[text[:2]]) if text[:2] in ("0o", "0x") else int(text)


def number(loader, node):
    return float(node.value.lower().replace(".inf", "inf").replace(".nan", "nan"))


KINDS = {
    "null": r"~|null|Null|NULL|",
    "bool": r"true|True|TRUE|false|False|FALSE",
    "int": r"[-+]?[0-9]+|0o[0-7]+|0x[0-9a-fA-F]+",
    "float": r"[-+]?(?:\.[0-9]+|[0-9]+(?:\.[0-9]*)?)(?:[eE][-+]?[0-9]+)?"
             r"|[-+]?(?:\.inf|\.Inf|\.INF)|\.nan|\.NaN|\.NAN",
}
for kind, pattern in KINDS.items():
    Loader.add_implicit_resolver(f"tag:yaml.org,2002:{kind}", re.compile(f"^(?:{pattern})$"), None)
Loader.add_constructor("tag:yaml.org,2002:map", Loader.construct_yaml_map)
Loader.add_constructor("tag:yaml.org,2002:int", whole_number)
Loader.add_constructor("tag:yaml.org,2002:float", number)


def load(text):
    return yaml.load(text, Loader)


def check():
    """The cases of YAML 1.2.2, example 10.9 and thereabouts, and what 1.1 would make of others."""
    read = load("[yes, off, 1:30, 2025-04-12, 0o17, 0x1F, 017, 5., .5, 1e3, ~, true, =, '1', a b]")
    wanted = ["yes", "off", "1:30", "2025-04-12", 15, 31, 17, 5.0, 0.5, 1000.0,
              None, True, "=", "1", "a b"]
    assert read == wanted and [type(x) for x in read] == [type(x) for x in wanted], read
    assert load("{51: a, on: b, 1.0: c}") == {"51": "a", "on": "b", "1.0": "c"}


if __name__ == "__main__":
    check()
