#include "core/intake/container/workbook.h"

#include "core/intake/container/limits.h"
#include "core/intake/container/workbook_parts.h"
#include "core/intake/container/xml_part.h"
#include "core/intake/csv/tokens.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <charconv>

namespace holdband {

namespace {

constexpr std::int64_t lastSheetRow = 1'048'576; ///< of the format

/// A cell while it is read.
struct SheetCell {
    std::string name; ///< "B7"; may be empty
    std::string type;
    std::size_t style = 0;
    std::string value;
    bool hasFormula = false;
};

/// The column of "B7", from 0. Absent: it has no letters, or is no column of the format.
std::optional<std::size_t> columnOfCell(std::string_view name)
{
    constexpr std::size_t mostColumns = 16'384;
    std::size_t column = 0;
    std::size_t letters = 0;
    for (; letters < name.size() && name[letters] >= 'A' && name[letters] <= 'Z'; ++letters) {
        column = column * 26 + static_cast<std::size_t>(name[letters] - 'A' + 1);
        if (column > mostColumns)
            return std::nullopt;
    }
    return letters == 0 ? std::nullopt : std::optional(column - 1);
}

template <typename Number>
std::optional<Number> numberIn(const std::string& text)
{
    Number number{};
    const char* end = text.data() + text.size();
    const auto read = std::from_chars(text.data(), end, number);
    return read.ec == std::errc{} && read.ptr == end ? std::optional(number) : std::nullopt;
}

/// Reads the cells of one sheet.
class SheetReader {
public:
    SheetReader(const WorkbookParts& book, XmlPart& xml, std::int64_t most)
        : m_book(book), m_xml(xml), m_most(most)
    {
    }

    /// Whether all of it was read.
    Result<bool> run()
    {
        while (m_xml.next() && !m_xml.isEnd(QLatin1String("sheetData"))) {
            if (m_xml.isStart(QLatin1String("row")))
                HOLDBAND_TRY(beginRow());
            else if (m_xml.isStart(QLatin1String("c")))
                HOLDBAND_TRY(readCell());
            else if (m_xml.isEnd(QLatin1String("row")))
                endRow();
            if (m_table.size() >= m_most)
                return false;
        }
        return true;
    }

    std::string take() { return m_table.take(); }

    std::optional<std::string> note() const
    {
        if (m_uncomputed == 0)
            return std::nullopt;
        return Phrase::counted("%n formulas have no stored value (the first in %1): open the "
                               "workbook, compute it and save it",
                               "%n formula has no stored value (%1): open the workbook, "
                               "compute it and save it",
                               m_uncomputed)
            .with(m_firstUncomputed);
    }

private:
    Done beginRow()
    {
        const std::string number = m_xml.attribute(QLatin1String("r"));
        const auto row = number.empty() ? std::optional(m_row + 1) : numberIn<std::int64_t>(number);
        if (!row || *row <= m_row || *row > lastSheetRow)
            return damagedSheet(Phrase::tr("its rows are not in order"));
        m_row = *row;
        m_cells.clear();
        m_nextColumn = 0;
        return {};
    }

    void endRow()
    {
        if (!m_cells.empty())
            m_table.writeRow(m_row, m_cells);
        m_cells.clear();
    }

    Done readCell()
    {
        SheetCell cell;
        cell.name = m_xml.attribute(QLatin1String("r"));
        cell.type = m_xml.attribute(QLatin1String("t"));
        cell.style = numberIn<std::size_t>(m_xml.attribute(QLatin1String("s"))).value_or(0);
        const auto column =
            cell.name.empty() ? std::optional(m_nextColumn) : columnOfCell(cell.name);
        if (!column || m_row == 0)
            return damagedSheet(Phrase::tr("a cell has no place in it"));
        m_nextColumn = *column + 1;
        readContents(cell);
        if (cell.value.empty()) {
            noteFormula(cell);
            return {};
        }
        auto text = textOf(cell);
        HOLDBAND_TRY(text);
        return place(*column, std::move(*text));
    }

    /// Up to the end of the cell.
    void readContents(SheetCell& cell)
    {
        while (m_xml.next() && !m_xml.isEnd(QLatin1String("c"))) {
            if (m_xml.isStart(QLatin1String("f"))) {
                cell.hasFormula = true;
                m_xml.xml().skipCurrentElement();
            } else if (m_xml.isStart(QLatin1String("rPh"))) {
                m_xml.xml().skipCurrentElement();
            } else if (m_xml.isStart(QLatin1String("v")) || m_xml.isStart(QLatin1String("t"))) {
                cell.value += m_xml.xml().readElementText().toStdString();
            }
        }
    }

    void noteFormula(const SheetCell& cell)
    {
        if (!cell.hasFormula || cell.type == "str") // a formula can give an empty text
            return;
        if (m_uncomputed++ == 0)
            m_firstUncomputed = cell.name;
    }

    Done place(std::size_t column, std::string text)
    {
        if (column >= CsvTokens::maxFields)
            return damagedSheet(Phrase::tr("it has more than %1 columns")
                                    .with(std::to_string(CsvTokens::maxFields)));
        if (m_cells.size() <= column)
            m_cells.resize(column + 1);
        if (!m_cells[column].empty())
            return damagedSheet(Phrase::tr("it has the same cell twice"));
        m_cells[column] = std::move(text);
        return {};
    }

    Result<std::string> textOf(const SheetCell& cell) const
    {
        if (cell.type == "s") {
            const auto index = numberIn<std::size_t>(cell.value);
            const auto text = index ? m_book.texts.at(*index) : std::nullopt;
            if (!text)
                return damagedSheet(Phrase::tr("a cell has a text that is missing"));
            return std::string(*text);
        }
        if (cell.type == "b")
            return std::string(cell.value == "1" ? "TRUE" : "FALSE");
        if (!cell.type.empty() && cell.type != "n")
            return cell.value; // a text, an error such as #DIV/0!, a date in ISO 8601
        const auto number = numberIn<double>(cell.value);
        if (!number)
            return cell.value;
        const CellForm form =
            cell.style < m_book.forms.size() ? m_book.forms[cell.style] : CellForm::number;
        const auto time = serialText(*number, form, m_book.from1904);
        return time ? *time : cellNumber(*number);
    }

    tl::unexpected<Problem> damagedSheet(std::string what) const
    {
        return dataProblem(
            std::move(what),
            Phrase::tr("row %1").with(std::to_string(std::max(m_row, std::int64_t{1}))),
            Phrase::tr("save the workbook again, or export the sheet as CSV"));
    }

    const WorkbookParts& m_book;
    XmlPart& m_xml;
    std::int64_t m_most;
    TableWriter m_table;
    std::vector<std::string> m_cells;
    std::int64_t m_row = 0;
    std::size_t m_nextColumn = 0;
    std::uint64_t m_uncomputed = 0;
    std::string m_firstUncomputed;
};

std::vector<std::string> sheetNames(const WorkbookParts& book)
{
    std::vector<std::string> names;
    for (const WorkbookSheet& sheet : book.sheets)
        names.push_back(sheet.name);
    return names;
}

Result<const WorkbookSheet*> chosenSheet(const WorkbookParts& book,
                                         const std::optional<std::string>& name)
{
    const auto& sheets = book.sheets;
    if (!name) {
        const auto shown = std::find_if(sheets.begin(), sheets.end(),
                                        [](const WorkbookSheet& sheet) { return !sheet.hidden; });
        return shown == sheets.end() ? &sheets.front() : &*shown;
    }
    const auto found = std::find_if(sheets.begin(), sheets.end(), [&](const WorkbookSheet& sheet) {
        return folded(sheet.name) == folded(*name);
    });
    if (found != sheets.end())
        return &*found;
    return dataProblem(Phrase::tr("there is no sheet \"%1\"").with(*name), {},
                       Phrase::tr("the sheets are: %1").with(joined(sheetNames(book))));
}

/// Which sheet was read, if the user didn't choose it among others.
std::optional<std::string> sheetNote(const WorkbookParts& book, const WorkbookSheet& read,
                                     const std::optional<std::string>& wanted)
{
    std::vector<std::string> others;
    for (const WorkbookSheet& sheet : book.sheets) {
        if (&sheet != &read && !sheet.hidden)
            others.push_back(sheet.name);
    }
    if (wanted || others.empty())
        return std::nullopt;
    return Phrase::tr("the sheet \"%1\" was read; the workbook also has: %2")
        .with(read.name, joined(others));
}

} // namespace

bool isOfficeDocument(const std::vector<ZipEntry>& entries)
{
    return std::any_of(entries.begin(), entries.end(), [](const ZipEntry& entry) {
        return entry.name == "[Content_Types].xml" || entry.name == "mimetype";
    });
}

Result<std::vector<std::string>> shownSheets(std::string_view archive,
                                             const std::vector<ZipEntry>& entries)
{
    const auto sheets = workbookSheets(PackageParts(archive, entries));
    HOLDBAND_TRY(sheets);
    const bool anyShown =
        std::any_of(sheets->begin(), sheets->end(), [](const auto& each) { return !each.hidden; });
    std::vector<std::string> names;
    for (const WorkbookSheet& sheet : *sheets) {
        if (!sheet.hidden || !anyShown)
            names.push_back(sheet.name);
    }
    return names;
}

Result<TableText> sheetTable(std::string_view archive, const std::vector<ZipEntry>& entries,
                             const std::optional<std::string>& sheet,
                             std::optional<std::int64_t> most)
{
    const PackageParts parts(archive, entries);
    auto book = workbookParts(parts);
    HOLDBAND_TRY(book);
    const auto chosen = chosenSheet(*book, sheet);
    HOLDBAND_TRY(chosen);
    const std::string& name = (*chosen)->name;
    const ZipEntry* entry = parts.find((*chosen)->part);
    if (!entry)
        return dataProblem(Phrase::tr("the sheet \"%1\" is missing").with(name), {},
                           Phrase::tr("save the workbook again, or export the sheet as CSV"));
    auto xml = XmlPart::open(archive, *entry);
    HOLDBAND_TRY(xml);
    SheetReader reader(*book, **xml, most.value_or(mostWhole));
    const auto complete = reader.run();
    if (complete && *complete)
        HOLDBAND_TRY((*xml)->finish());
    if (complete && !*complete && !most)
        return dataProblem(Phrase::tr("the sheet \"%1\" is larger than 512 MiB").with(name));
    if (!complete) {
        Problem problem = complete.error();
        problem.place = Phrase::tr("sheet %1, %2").with(name, problem.place);
        return failure(std::move(problem));
    }
    TableText table{reader.take()};
    for (const auto& note : {sheetNote(*book, **chosen, sheet), reader.note()}) {
        if (note)
            table.notes.push_back(*note);
    }
    return table;
}

} // namespace holdband
