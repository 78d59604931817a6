"""The LibreOffice extension: everything that `sheetfuncs calc-addin` writes into one file.

The same catalogue gives the same bytes on every machine, so that a finished add-in can be
compared with a fresh one.
"""

from __future__ import annotations

import zipfile
from pathlib import Path
from xml.etree.ElementTree import Element, SubElement, indent, tostring

import sheetfuncs
from sheetfuncs.files import ends, new_file
from sheetfuncs.formulas.card import Card
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts.calc import INTERFACE, SERVICE
from sheetfuncs.hosts.calc.typelibrary import type_library

PACKAGE = Path(sheetfuncs.__file__).parent
INSIDE = (  # the part of our package that needs no other
    "LICENSE",
    "__init__.py",
    "science/*.py",
    "formulas/*.py",
    "hosts/__init__.py",
    "hosts/cells.py",
    "hosts/calc/__init__.py",
    "hosts/calc/addin.py",
)
ADDIN = "python/sheetfuncs/hosts/calc/addin.py"
PARTS = {
    "functions.rdb": "application/vnd.sun.star.uno-typelibrary;type=RDB",
    "functions.components": "application/vnd.sun.star.uno-components",
    "CalcAddIns.xcu": "application/vnd.sun.star.configuration-data",
}

IDENTIFIER = "sheetfuncs.calc"  # by this LibreOffice tells an update from another extension
OLDEST = "7.4"
CATEGORY = "Add-In"  # of those in the Function Wizard: there the catalogue stands together
DESCRIPTION = (
    "Maple sugaring functions for every sheet, from the taps to the jars. They stand in the Function Wizard, "
    "category Add-in, and need nothing else installed.\n\n"
    "For LibreOffice 7.4 and newer. In 7.4 they are not found when an .xlsx is opened: keep sheets that use them "
    "as .ods there. In 25.2 both work.\n"
)


def write_addin(path: Path, replace: bool = False) -> None:
    """Write the extension as a new file."""
    ends(path, "the add-in", ".oxt")
    with new_file(path, replace) as part, zipfile.ZipFile(part, "w") as archive:
        for name, content in addin_files().items():
            entry = zipfile.ZipInfo(name)  # dated 1980, and not compressed: zlib's output differs by version
            entry.create_system = 3
            entry.external_attr = 0o644 << 16
            archive.writestr(entry, content)


def addin_files() -> dict[str, bytes]:
    """Every file of the extension by its name."""
    package = sorted(path for pattern in INSIDE for path in PACKAGE.glob(pattern))
    return {
        "META-INF/manifest.xml": _manifest(),
        "description.xml": _description(),
        "description.txt": DESCRIPTION.encode(),
        **dict(zip(PARTS, (type_library(INTERFACE, methods()), _components(), _wizard()))),
        **{
            f"python/sheetfuncs/{path.relative_to(PACKAGE).as_posix()}": path.read_bytes().replace(b"\r\n", b"\n")
            for path in package
        },
    }


def methods() -> dict[str, dict[str, str]]:
    """Each function's parameters, and how Calc hands them over.  Only an `any` may be left out.

    A `double` or a `string` Calc calls required in the wizard, and of a range it takes one
    element after the other in an array formula; with an `any` it does neither.
    """
    return {
        name: {_identifier(parameter): _kind(function.card, parameter) for parameter in function.card.parameters}
        for name, function in CATALOGUE.items()
    }


def _kind(card: Card, parameter: str) -> str:
    if parameter not in card.arguments:
        return "any"
    return "string" if card.arguments[parameter].allowed else "double"


def _identifier(parameter: str) -> str:
    """A parameter's name in the type library, where small letters do not go with underscores."""
    return parameter.replace("_", "")


def _wizard() -> bytes:
    """What Calc shows of each function in the Function Wizard, and its name in an `.xlsx`."""
    root = Element(
        "oor:component-data",
        {
            "xmlns:oor": "http://openoffice.org/2001/registry",
            "oor:name": "CalcAddIns",
            "oor:package": "org.openoffice.Office",
        },
    )
    info = SubElement(root, "node", {"oor:name": "AddInInfo"})
    functions = SubElement(_new_node(info, SERVICE), "node", {"oor:name": "AddInFunctions"})
    for name, function in CATALOGUE.items():
        node = _new_node(functions, name)
        _property(node, "DisplayName", name, "en-US")
        _property(node, "CompatibilityName", name, "en-US")
        _property(node, "Description", function.card.sentence, "en-US")
        _property(node, "Category", CATEGORY)
        parameters = SubElement(node, "node", {"oor:name": "Parameters"})
        for parameter, words in function.card.parameter_help.items():
            described = _new_node(parameters, _identifier(parameter))
            _property(described, "DisplayName", parameter, "en-US")
            _property(described, "Description", words, "en-US")
    return _xml(root)


def _new_node(parent: Element, name: str) -> Element:
    return SubElement(parent, "node", {"oor:name": name, "oor:op": "replace"})


def _property(parent: Element, name: str, text: str, language: str = "") -> None:
    value = SubElement(SubElement(parent, "prop", {"oor:name": name}), "value")
    value.text = text
    if language:
        value.set("xml:lang", language)


def _components() -> bytes:
    """What LibreOffice must load to call the functions; said here, so that nothing runs on installation."""
    root = Element("components", {"xmlns": "http://openoffice.org/2010/uno-components"})
    component = SubElement(root, "component", {"loader": "com.sun.star.loader.Python", "uri": ADDIN})
    implementation = SubElement(component, "implementation", {"name": SERVICE})
    for service in (SERVICE, "com.sun.star.sheet.AddIn"):
        SubElement(implementation, "service", {"name": service})
    return _xml(root)


def _manifest() -> bytes:
    root = Element("manifest:manifest", {"xmlns:manifest": "http://openoffice.org/2001/manifest"})
    for name, kind in PARTS.items():
        entry = {"manifest:full-path": name, "manifest:media-type": kind}
        SubElement(root, "manifest:file-entry", entry)
    return _xml(root)


def _description() -> bytes:
    namespace = "http://openoffice.org/extensions/description/2006"
    root = Element(
        "description",
        {
            "xmlns": namespace,
            "xmlns:d": namespace,
            "xmlns:lo": "http://libreoffice.org/extensions/description/2011",
            "xmlns:xlink": "http://www.w3.org/1999/xlink",
        },
    )
    SubElement(root, "identifier", {"value": IDENTIFIER})
    SubElement(root, "version", {"value": sheetfuncs.__version__})
    SubElement(SubElement(root, "display-name"), "name", {"lang": "en"}).text = "Maple sugaring functions"
    words = SubElement(root, "extension-description")
    SubElement(words, "src", {"lang": "en", "xlink:href": "description.txt"})
    needed = SubElement(root, "dependencies")
    SubElement(needed, "lo:LibreOffice-minimal-version", {"value": OLDEST, "d:name": f"LibreOffice {OLDEST}"})
    return _xml(root)


def _xml(root: Element) -> bytes:
    indent(root)
    text: bytes = tostring(root, encoding="UTF-8", xml_declaration=True)
    return text + b"\n"
