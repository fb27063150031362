// Makes small workbooks for tests.
#pragma once

#include "tests/intake/packing.h"

#include <string>
#include <utility>
#include <vector>

namespace holdband::test {

struct MadeSheet {
    std::string name;
    std::string rows; ///< XML: "<row r=\"1\"><c …>…</c></row>"
    std::string state = "visible";
};

struct MadeWorkbook {
    std::vector<MadeSheet> sheets;
    std::vector<std::string> texts = {};   ///< XML of the shared ones: "<t>Beer</t>"
    std::vector<std::string> formats = {}; ///< codes; style 1 + i has the i-th, style 0 none
    bool from1904 = false;
};

/// A text cell, and a number with a style.
inline std::string textCell(const std::string& text)
{
    return "<c t=\"inlineStr\"><is><t>" + text + "</t></is></c>";
}

inline std::string numberCell(const std::string& number, int style = 0)
{
    return "<c s=\"" + std::to_string(style) + "\"><v>" + number + "</v></c>";
}

inline std::string rowOf(const std::string& cells)
{
    return "<row>" + cells + "</row>";
}

inline std::string workbookStyles(const std::vector<std::string>& formats)
{
    std::string codes, styles = "<xf numFmtId=\"0\"/>";
    for (std::size_t i = 0; i < formats.size(); ++i) {
        const std::string id = std::to_string(164 + i);
        codes += "<numFmt numFmtId=\"" + id + "\" formatCode=\"" + formats[i] + "\"/>";
        styles += "<xf numFmtId=\"" + id + "\"/>";
    }
    return "<styleSheet><numFmts>" + codes +
           "</numFmts><cellStyleXfs><xf numFmtId=\"14\"/>"
           "</cellStyleXfs><cellXfs>" +
           styles + "</cellXfs></styleSheet>";
}

/// Its files, so that a test can change them.
inline std::vector<ZippedFile> workbookFiles(const MadeWorkbook& made)
{
    const std::string office =
        "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    const auto link = [&](const std::string& id, const std::string& type, const std::string& to) {
        return "<Relationship Id=\"" + id + "\" Type=\"" + office + "/" + type + "\" Target=\"" +
               to + "\"/>";
    };
    std::vector<ZippedFile> files{
        {"[Content_Types].xml", "<Types/>"},
        {"_rels/.rels",
         "<Relationships>" + link("r1", "officeDocument", "xl/workbook.xml") + "</Relationships>"}};
    std::string sheets, texts;
    std::string links =
        link("t", "sharedStrings", "sharedStrings.xml") + link("s", "styles", "/xl/styles.xml");
    for (std::size_t i = 0; i < made.sheets.size(); ++i) {
        const std::string number = std::to_string(i + 1);
        sheets += "<sheet name=\"" + made.sheets[i].name + "\" sheetId=\"" + number +
                  "\" state=\"" + made.sheets[i].state + "\" r:id=\"s" + number + "\"/>";
        links += link("s" + number, "worksheet", "worksheets/sheet" + number + ".xml");
        files.push_back({"xl/worksheets/sheet" + number + ".xml",
                         "<?xml version=\"1.0\"?><worksheet><sheetData>" + made.sheets[i].rows +
                             "</sheetData></worksheet>"});
    }
    for (const std::string& text : made.texts)
        texts += "<si>" + text + "</si>";
    files.push_back({"xl/workbook.xml", "<workbook xmlns:r=\"" + office +
                                            "\"><workbookPr date1904=\"" +
                                            (made.from1904 ? "1" : "0") + "\"/><sheets>" + sheets +
                                            "</sheets></workbook>"});
    files.push_back({"xl/_rels/workbook.xml.rels", "<Relationships>" + links + "</Relationships>"});
    files.push_back({"xl/sharedStrings.xml", "<sst>" + texts + "</sst>"});
    files.push_back({"xl/styles.xml", workbookStyles(made.formats)});
    return files;
}

inline std::string workbookBytes(const MadeWorkbook& made)
{
    return zipped(workbookFiles(made));
}

} // namespace holdband::test
