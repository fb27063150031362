#include "core/intake/container/workbook_parts.h"

#include "core/intake/container/limits.h"
#include "core/intake/container/xml_part.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <charconv>
#include <map>

namespace holdband {

namespace {

struct PartLink {
    std::string id;
    std::string type; ///< the last word of its address: "worksheet"
    std::string part;
};

std::string folderOfPart(const std::string& part)
{
    const std::size_t slash = part.find_last_of('/');
    return slash == part.npos ? std::string() : part.substr(0, slash + 1);
}

/// "xl/worksheets/sheet1.xml" of "worksheets/sheet1.xml" in "xl/", or of
/// "/xl/worksheets/sheet1.xml".
std::string partNamed(std::string folder, std::string target)
{
    if (target.starts_with('/'))
        return target.substr(1);
    while (target.starts_with("../")) {
        target.erase(0, 3);
        if (!folder.empty())
            folder = folderOfPart(folder.substr(0, folder.size() - 1));
    }
    return folder + target;
}

/// The links of a part; none if it has no file of them.
Result<std::vector<PartLink>> linksOf(const PackageParts& parts, const std::string& part)
{
    const std::string folder = folderOfPart(part);
    std::vector<PartLink> links;
    const ZipEntry* entry = parts.find(folder + "_rels/" + part.substr(folder.size()) + ".rels");
    if (!entry)
        return links;
    auto file = XmlPart::open(parts.archive(), *entry);
    HOLDBAND_TRY(file);
    XmlPart& xml = **file;
    while (xml.next()) {
        if (!xml.isStart(QLatin1String("Relationship")))
            continue;
        const std::string type = xml.attribute(QLatin1String("Type"));
        links.push_back({xml.attribute(QLatin1String("Id")),
                         type.substr(type.find_last_of('/') + 1),
                         partNamed(folder, xml.attribute(QLatin1String("Target")))});
    }
    HOLDBAND_TRY(xml.finish());
    return links;
}

const PartLink* linkOfType(const std::vector<PartLink>& links, std::string_view type)
{
    const auto found = std::find_if(links.begin(), links.end(),
                                    [&](const PartLink& link) { return link.type == type; });
    return found == links.end() ? nullptr : &*found;
}

const PartLink* linkOfId(const std::vector<PartLink>& links, const std::string& id)
{
    const auto found = std::find_if(links.begin(), links.end(),
                                    [&](const PartLink& link) { return link.id == id; });
    return found == links.end() ? nullptr : &*found;
}

/// The `id` that is in a namespace; without one it is the sheet's own number.
std::string linkIdOf(const QXmlStreamReader& xml)
{
    for (const QXmlStreamAttribute& each : xml.attributes()) {
        if (each.name() == QLatin1String("id") && !each.namespaceUri().isEmpty())
            return each.value().toString().toStdString();
    }
    return {};
}

bool isTrue(const std::string& text)
{
    return text == "1" || text == "true";
}

int wholeNumber(const std::string& text)
{
    int number = -1;
    std::from_chars(text.data(), text.data() + text.size(), number);
    return number;
}

Done readSheets(const PackageParts& parts, const ZipEntry& entry,
                const std::vector<PartLink>& links, WorkbookParts& book)
{
    auto file = XmlPart::open(parts.archive(), entry);
    HOLDBAND_TRY(file);
    XmlPart& xml = **file;
    while (xml.next()) {
        if (xml.isStart(QLatin1String("workbookPr")))
            book.from1904 = isTrue(xml.attribute(QLatin1String("date1904")));
        if (!xml.isStart(QLatin1String("sheet")))
            continue;
        const PartLink* link = linkOfId(links, linkIdOf(xml.xml()));
        const std::string state = xml.attribute(QLatin1String("state"));
        if (link && link->type == "worksheet")
            book.sheets.push_back({xml.attribute(QLatin1String("name")), link->part,
                                   !state.empty() && state != "visible"});
    }
    return xml.finish();
}

Done readTexts(const PackageParts& parts, const ZipEntry& entry, SharedTexts& texts)
{
    auto file = XmlPart::open(parts.archive(), entry);
    HOLDBAND_TRY(file);
    XmlPart& xml = **file;
    std::string text;
    while (xml.next()) {
        if (xml.isStart(QLatin1String("si")))
            text.clear();
        else if (xml.isStart(QLatin1String("rPh"))) // how to pronounce it
            xml.xml().skipCurrentElement();
        else if (xml.isStart(QLatin1String("t")))
            text += xml.xml().readElementText().toStdString();
        else if (xml.isEnd(QLatin1String("si")) && !texts.add(text))
            return inEntry(
                {ProblemKind::data, Phrase::tr("the workbook holds too many texts"), {}, {}},
                entry);
    }
    return xml.finish();
}

/// A workbook of which only the list of sheets has been read.
struct OpenedBook {
    WorkbookParts parts;
    std::vector<PartLink> links;
};

Result<OpenedBook> openBook(const PackageParts& parts)
{
    const auto roots = linksOf(parts, "");
    HOLDBAND_TRY(roots);
    const PartLink* root = linkOfType(*roots, "officeDocument");
    const ZipEntry* entry = root ? parts.find(root->part) : nullptr;
    if (!entry || entry->name.ends_with(".bin"))
        return dataProblem(Phrase::tr("this is a document that can't be read"), {},
                           Phrase::tr("save it as a workbook (.xlsx) or as CSV"));
    auto links = linksOf(parts, entry->name);
    HOLDBAND_TRY(links);
    OpenedBook book{{}, std::move(*links)};
    HOLDBAND_TRY(readSheets(parts, *entry, book.links, book.parts));
    if (book.parts.sheets.empty())
        return dataProblem(Phrase::tr("there is no sheet of cells in it"));
    return book;
}

/// The form of each style's number format.
Done readForms(const PackageParts& parts, const ZipEntry& entry, std::vector<CellForm>& forms)
{
    auto file = XmlPart::open(parts.archive(), entry);
    HOLDBAND_TRY(file);
    XmlPart& xml = **file;
    std::map<int, CellForm> own;
    bool inFormats = false, inStyles = false;
    while (xml.next()) {
        const bool start = xml.xml().isStartElement();
        if (xml.xml().name() == QLatin1String("numFmts"))
            inFormats = start;
        else if (xml.xml().name() == QLatin1String("cellXfs"))
            inStyles = start;
        if (!start)
            continue;
        const int id = wholeNumber(xml.attribute(QLatin1String("numFmtId")));
        if (inFormats && xml.isStart(QLatin1String("numFmt")))
            own[id] = formOfCode(xml.attribute(QLatin1String("formatCode")));
        if (inStyles && xml.isStart(QLatin1String("xf"))) {
            const auto found = own.find(id);
            forms.push_back(found == own.end() ? builtInForm(id) : found->second);
        }
    }
    return xml.finish();
}

/// Reads the part of that type with `read`, if the workbook has one.
template <typename Read>
Done readLinked(const PackageParts& parts, const std::vector<PartLink>& links,
                std::string_view type, Read read)
{
    const PartLink* link = linkOfType(links, type);
    const ZipEntry* entry = link ? parts.find(link->part) : nullptr;
    return entry ? read(*entry) : Done();
}

} // namespace

const ZipEntry* PackageParts::find(std::string_view name) const
{
    const std::string wanted = folded(std::string(name));
    const auto found = std::find_if(m_entries.begin(), m_entries.end(), [&](const ZipEntry& entry) {
        return folded(entry.name) == wanted;
    });
    return found == m_entries.end() ? nullptr : &*found;
}

bool SharedTexts::add(std::string_view text)
{
    constexpr std::size_t mostTexts = 10'000'000;
    m_text += text;
    m_ends.push_back(m_text.size());
    return m_ends.size() <= mostTexts && static_cast<std::int64_t>(m_text.size()) <= mostWhole;
}

std::optional<std::string_view> SharedTexts::at(std::size_t index) const
{
    if (index >= m_ends.size())
        return std::nullopt;
    const std::size_t from = index == 0 ? 0 : m_ends[index - 1];
    return std::string_view(m_text).substr(from, m_ends[index] - from);
}

Result<std::vector<WorkbookSheet>> workbookSheets(const PackageParts& parts)
{
    auto book = openBook(parts);
    HOLDBAND_TRY(book);
    return std::move(book->parts.sheets);
}

Result<WorkbookParts> workbookParts(const PackageParts& parts)
{
    auto opened = openBook(parts);
    HOLDBAND_TRY(opened);
    WorkbookParts& book = opened->parts;
    HOLDBAND_TRY(readLinked(parts, opened->links, "sharedStrings", [&](const ZipEntry& each) {
        return readTexts(parts, each, book.texts);
    }));
    HOLDBAND_TRY(readLinked(parts, opened->links, "styles", [&](const ZipEntry& each) {
        return readForms(parts, each, book.forms);
    }));
    return std::move(book);
}

} // namespace holdband
