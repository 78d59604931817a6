"""Parts of a workbook file against the schemas of Open XML; where from: tests/schemas/SOURCES.md."""

from __future__ import annotations

import functools
import io
import zipfile
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from lxml import etree

FOLDER = Path(__file__).parents[1] / "schemas"
_FORMATS = "http://schemas.openxmlformats.org"
_MCE = "{http://schemas.openxmlformats.org/markup-compatibility/2006}"
_SPACE = "{http://www.w3.org/XML/1998/namespace}space"

# The schema of a part, by the namespace of its root.
OF_NAMESPACE = {
    f"{_FORMATS}/spreadsheetml/2006/main": "transitional/sml.xsd",
    f"{_FORMATS}/drawingml/2006/chart": "transitional/dml-chart.xsd",
    f"{_FORMATS}/drawingml/2006/main": "transitional/dml-main.xsd",
    f"{_FORMATS}/drawingml/2006/spreadsheetDrawing": "transitional/dml-spreadsheetDrawing.xsd",
    f"{_FORMATS}/officeDocument/2006/custom-properties": "transitional/shared-documentPropertiesCustom.xsd",
    f"{_FORMATS}/officeDocument/2006/extended-properties": "transitional/shared-documentPropertiesExtended.xsd",
    f"{_FORMATS}/package/2006/content-types": "packaging/opc-contentTypes.xsd",
    f"{_FORMATS}/package/2006/relationships": "packaging/opc-relationships.xsd",
    f"{_FORMATS}/package/2006/metadata/core-properties": "packaging/opc-coreProperties.xsd",
}

# The packaging schema imports these two from the web: the elements that it refers to there, of any content.
_DUBLIN_CORE = {
    "dc.xsd": ("http://purl.org/dc/elements/1.1/", "creator description identifier language subject title"),
    "dcterms.xsd": ("http://purl.org/dc/terms/", "created modified"),
}


class _DublinCore(etree.Resolver):
    def resolve(self, url: str, public_id: str, context: Any) -> Any:
        name = url.rpartition("/")[2]
        if name not in _DUBLIN_CORE:
            return None
        namespace, elements = _DUBLIN_CORE[name]
        date = '<xs:simpleType name="W3CDTF"><xs:restriction base="xs:dateTime"/></xs:simpleType>'
        declared = date + "".join(f'<xs:element name="{one}"/>' for one in elements.split())
        schema = f'<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema" targetNamespace="{namespace}">{declared}'
        return self.resolve_string(f"{schema}</xs:schema>", context)


@functools.cache
def _schema(namespace: str) -> etree.XMLSchema:
    """The schema of a namespace, and that of `xml:lang`, which one of them uses without saying where it is."""
    parser = etree.XMLParser(no_network=True)
    parser.resolvers.add(_DublinCore())
    imports = {"http://www.w3.org/XML/1998/namespace": "transitional/xml.xsd", namespace: OF_NAMESPACE[namespace]}
    both = "".join(f'<xs:import namespace="{name}" schemaLocation="{file}"/>' for name, file in imports.items())
    text = f'<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema">{both}</xs:schema>'
    return etree.XMLSchema(etree.fromstring(text, parser, base_url=f"{FOLDER.as_uri()}/"))


def faults(content: bytes) -> Iterator[str]:
    """What the schemas have against the parts of a workbook file; a part that no schema is known for is a fault."""
    with zipfile.ZipFile(io.BytesIO(content)) as archive:
        for name in archive.namelist():
            if name.endswith((".xml", ".rels", ".vml")):
                yield from (f"{name}: {line}" for line in faults_of(archive.read(name)))


def faults_of(part: bytes) -> Iterator[str]:
    """What the schema of one part has against it."""
    root = etree.fromstring(part, etree.XMLParser(no_network=True, resolve_entities=False))
    namespace = etree.QName(root).namespace
    if namespace not in OF_NAMESPACE:
        yield f"no schema for {root.tag}"
        return
    _as_a_reader_sees_it(root)
    schema = _schema(namespace)
    if not schema.validate(root):
        yield from (f"line {error.line}: {error.message}" for error in schema.error_log)


def _as_a_reader_sees_it(root: Any) -> None:
    """Without what may be ignored."""
    ignorable = {root.nsmap.get(prefix) for prefix in root.attrib.pop(f"{_MCE}Ignorable", "").split()}
    for element in list(root.iter(etree.Element)):
        if element.tag.endswith("}t"):
            element.attrib.pop(_SPACE, None)
        for name in [name for name in element.attrib if etree.QName(name).namespace in ignorable]:
            del element.attrib[name]
        if etree.QName(element).namespace in ignorable:
            element.getparent().remove(element)
