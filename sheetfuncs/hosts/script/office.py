"""The functions as Office's custom functions: the script, what Excel shows of it, and the manifest.

Excel loads them from any place that serves files over https; nothing runs there.  The names carry
a word in front, `SF.FINISH_TEMP`, as Excel asks of every add-in.
"""

from __future__ import annotations

import json
from xml.sax.saxutils import escape

from sheetfuncs import __version__
from sheetfuncs.formulas.card import Card
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts.script.javascript import SHARED, function_text

NAMESPACE = "SF"
IDENTITY = "763c1f33-6fa9-5204-9045-ea21f6794493"  # of the add-in: any, but always the same
SCRIPT, METADATA, PAGE, MANIFEST = "functions.js", "functions.json", "functions.html", "manifest.xml"

# What Excel knows of errors, by the names of CustomFunctions.ErrorCode; it takes no others back.
CODES = {
    "#VALUE!": "invalidValue",
    "#N/A": "notAvailable",
    "#NUM!": "invalidNumber",
    "#DIV/0!": "divisionByZero",
    "#NULL!": "nullReference",
}


def files(site: str) -> dict[str, str]:
    """Each file by its name; `site` is the address they will stand at."""
    return {
        SCRIPT: _script(),
        METADATA: json.dumps(_metadata(), indent=1, ensure_ascii=False) + "\n",
        PAGE: HTML,
        MANIFEST: _manifest(site.rstrip("/")),
    }


def _script() -> str:
    parts = [HEAD.format(version=__version__), SHARED, OWN.replace("%CODES%", json.dumps(CODES))]
    for function in CATALOGUE.values():
        card = function.card
        names = ", ".join(card.parameters)
        call = f"({names}) => cell_({card.name}_, [{names}])"
        parts.append(f'{function_text(card)}\n\nCustomFunctions.associate("{_id(card)}", {call});')
    return "\n\n".join(part.strip("\n") for part in parts) + "\n"


def _id(card: Card) -> str:
    """An id has letters and digits alone."""
    return card.name.replace("_", "")


def _metadata() -> dict[str, object]:
    """Every argument may be a range or left out, so that the script itself says what is wrong."""
    functions = [
        {
            "id": _id(card),
            "name": card.name,
            "description": card.sentence,
            "parameters": [
                {"name": name, "description": words, "type": "any", "dimensionality": "matrix", "optional": True}
                for name, words in card.parameter_help.items()
            ],
            "result": {"type": "any", "dimensionality": "matrix"},
        }
        for card in (function.card for function in CATALOGUE.values())
    ]
    return {"allowErrorForDataTypeAny": True, "functions": functions}


def _manifest(site: str) -> str:
    version = [*__version__.split("."), "0", "0"][:4]
    words = {"version": ".".join(version), "site": site, "namespace": NAMESPACE, "id": IDENTITY}
    words |= {"script": SCRIPT, "metadata": METADATA, "page": PAGE}
    return XML.format(**{name: escape(word, {'"': "&quot;"}) for name, word in words.items()})


HEAD = """\
// Maple sugaring functions for Excel, as custom functions of an Office add-in, of sheetfuncs {version}.
// Written by `sheetfuncs script-addin`: do not edit, but write it anew.
"""

OWN = """\
const CODES_ = %CODES%;

// Excel hands over every argument as rows of cells, null for one that is left out, and an error as an
// object.  What goes back are rows of cells again, with errors that are Excel's own.
function cell_(relation, given) {
  const plain = (value) => {
    if (Array.isArray(value)) return value.map((part) => (part === undefined || part === null ? 0 : plain(part)));
    if (value === undefined || value === null) return null;
    return typeof value === "object" ? value.code || value.basicValue : value;
  };
  const answer = each_(relation, given.map(plain), (text) =>
    new CustomFunctions.Error(CustomFunctions.ErrorCode[CODES_[text] || "invalidValue"])
  );
  return Array.isArray(answer) ? answer : [[answer]];
}
"""

HTML = f"""\
<!doctype html>
<html lang="en">
<meta charset="utf-8">
<title>Maple sugaring functions</title>
<script src="https://appsforoffice.microsoft.com/lib/1/hosted/custom-functions-runtime.js"></script>
<script src="{SCRIPT}"></script>
<p>Maple sugaring functions for Excel. There is nothing to do here: type <code>={NAMESPACE}.</code> in a cell.</p>
</html>
"""

XML = """\
<?xml version="1.0" encoding="UTF-8"?>
<OfficeApp xmlns="http://schemas.microsoft.com/office/appforoffice/1.1"
    xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"
    xmlns:bt="http://schemas.microsoft.com/office/officeappbasictypes/1.0"
    xsi:type="TaskPaneApp">
  <Id>{id}</Id>
  <Version>{version}</Version>
  <ProviderName>sheetfuncs</ProviderName>
  <DefaultLocale>en-US</DefaultLocale>
  <DisplayName DefaultValue="Maple sugaring functions"/>
  <Description DefaultValue="Functions for the sums of maple sugaring; they compute on this machine alone."/>
  <Hosts>
    <Host Name="Workbook"/>
  </Hosts>
  <Requirements>
    <Sets DefaultMinVersion="1.1">
      <Set Name="CustomFunctionsRuntime" MinVersion="1.2"/>
    </Sets>
  </Requirements>
  <DefaultSettings>
    <SourceLocation DefaultValue="{site}/{page}"/>
  </DefaultSettings>
  <Permissions>ReadWriteDocument</Permissions>
  <VersionOverrides xmlns="http://schemas.microsoft.com/office/taskpaneappversionoverrides"
      xsi:type="VersionOverridesV1_0">
    <Hosts>
      <Host xsi:type="Workbook">
        <AllFormFactors>
          <ExtensionPoint xsi:type="CustomFunctions">
            <Script>
              <SourceLocation resid="Script"/>
            </Script>
            <Page>
              <SourceLocation resid="Page"/>
            </Page>
            <Metadata>
              <SourceLocation resid="Metadata"/>
            </Metadata>
            <Namespace resid="Namespace"/>
          </ExtensionPoint>
        </AllFormFactors>
      </Host>
    </Hosts>
    <Resources>
      <bt:Urls>
        <bt:Url id="Script" DefaultValue="{site}/{script}"/>
        <bt:Url id="Page" DefaultValue="{site}/{page}"/>
        <bt:Url id="Metadata" DefaultValue="{site}/{metadata}"/>
      </bt:Urls>
      <bt:ShortStrings>
        <bt:String id="Namespace" DefaultValue="{namespace}"/>
      </bt:ShortStrings>
    </Resources>
  </VersionOverrides>
</OfficeApp>
"""
