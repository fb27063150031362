#include "core/intake/container/json_lines.h"

#include "core/intake/csv/tokens.h"
#include "core/intake/log/log_places.h"
#include "core/text/phrase.h"
#include "core/text/trimmed.h"

#include <QString>
#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <vector>

namespace holdband {

namespace {

using Json = nlohmann::json;

struct JsonLeaf {
    std::string key;
    std::string value; ///< numbers as written, so that a meter's decimals are not lost
};

/// Collects the values of one object. False stops the parser: the line is no object that can be
/// read.
class JsonLeaves : public nlohmann::json_sax<Json> {
public:
    std::vector<JsonLeaf> take() { return std::move(m_leaves); }

    bool null() override { return add({}); }
    bool boolean(bool value) override { return add(value ? "true" : "false"); }
    bool number_integer(number_integer_t value) override { return add(std::to_string(value)); }
    bool number_unsigned(number_unsigned_t value) override { return add(std::to_string(value)); }
    bool number_float(number_float_t, const string_t& text) override { return add(text); }
    bool string(string_t& text) override { return add(text); }
    bool binary(binary_t&) override { return false; }
    bool start_object(std::size_t) override { return enter(false); }
    bool end_object() override { return leave(); }
    bool start_array(std::size_t) override { return !m_levels.empty() && enter(true); }
    bool end_array() override { return leave(); }
    bool parse_error(std::size_t, const std::string&, const nlohmann::detail::exception&) override
    {
        return false;
    }
    bool key(string_t& name) override
    {
        m_levels.back().key = name;
        return true;
    }

private:
    struct Level {
        bool isList = false;
        std::size_t next = 0; ///< of a list
        std::string key;
    };

    bool enter(bool isList)
    {
        constexpr std::size_t mostLevels = 20;
        nextInList();
        m_levels.push_back({isList, 0, {}});
        return m_levels.size() <= mostLevels;
    }

    bool leave()
    {
        m_levels.pop_back();
        return true;
    }

    void nextInList()
    {
        if (!m_levels.empty() && m_levels.back().isList)
            m_levels.back().key = std::to_string(m_levels.back().next++);
    }

    bool add(const std::string& value)
    {
        if (m_levels.empty())
            return false;
        nextInList();
        std::string name;
        for (const Level& level : m_levels)
            name += (name.empty() ? "" : ".") + level.key;
        m_leaves.push_back({name, value});
        return m_keys.insert(name).second;
    }

    std::vector<Level> m_levels;
    std::vector<JsonLeaf> m_leaves;
    std::set<std::string> m_keys;
};

std::optional<std::vector<JsonLeaf>> leavesOf(std::string_view line)
{
    JsonLeaves leaves;
    if (!Json::sax_parse(line.begin(), line.end(), &leaves))
        return std::nullopt;
    return leaves.take();
}

std::string_view withoutMark(std::string_view text)
{
    constexpr std::string_view mark = "\xEF\xBB\xBF";
    return text.starts_with(mark) ? text.substr(mark.size()) : text;
}

/// Takes the first line from the text, without its end.
std::string_view takeLine(std::string_view& text)
{
    const std::size_t end = std::min(text.find('\n'), text.size());
    const std::string_view line = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
    return trimmed(line);
}

/// The table as it is read.
class JsonTable {
public:
    Done take(std::string_view line, std::int64_t number)
    {
        if (line.size() > CsvTokens::maxField)
            return dataProblem(Phrase::tr("the line is longer than 1 MiB"), linePlace(number));
        const auto leaves = leavesOf(line);
        if (leaves)
            HOLDBAND_TRY(addColumns(*leaves, number));
        if (m_names.size() != m_parts.back().width)
            m_parts.push_back({m_rows.size(), m_names.size()});
        m_cells.assign(m_names.size(), leaves ? std::string() : shownLine(line));
        for (std::size_t i = 0; leaves && i < leaves->size(); ++i)
            m_cells[m_index.at((*leaves)[i].key)] = (*leaves)[i].value;
        m_rows.writeRow(number, m_cells);
        return {};
    }

    std::string csv()
    {
        TableWriter header;
        header.writeRow(1, m_names);
        std::string csv = header.take();
        const std::string rows = m_rows.take();
        m_parts.push_back({static_cast<std::int64_t>(rows.size()), m_names.size()});
        for (std::size_t i = 0; i + 1 < m_parts.size(); ++i) {
            const auto begin = static_cast<std::size_t>(m_parts[i].begin);
            const auto end = static_cast<std::size_t>(m_parts[i + 1].begin);
            appendWidened(csv, std::string_view(rows).substr(begin, end - begin),
                          m_names.size() - m_parts[i].width);
        }
        return csv;
    }

private:
    /// From there on rows have that width, because a line brought new keys.
    struct Part {
        std::int64_t begin;
        std::size_t width;
    };

    /// Empty lines stay empty.
    static void appendWidened(std::string& csv, std::string_view rows, std::size_t by)
    {
        if (by == 0) {
            csv += rows;
            return;
        }
        while (!rows.empty()) {
            const std::size_t end = rows.find('\n');
            csv += rows.substr(0, end);
            csv.append(end == 0 ? 0 : by, ',');
            csv += '\n';
            rows.remove_prefix(end + 1);
        }
    }

    Done addColumns(const std::vector<JsonLeaf>& leaves, std::int64_t number)
    {
        for (const JsonLeaf& leaf : leaves) {
            if (m_index.emplace(leaf.key, m_names.size()).second)
                m_names.push_back(leaf.key);
        }
        if (m_names.size() > CsvTokens::maxFields)
            return dataProblem(Phrase::tr("the objects have more than %1 different keys")
                                   .with(std::to_string(CsvTokens::maxFields)),
                               linePlace(number), Phrase::tr("this is no log of a few sensors"));
        return {};
    }

    static std::string shownLine(std::string_view line)
    {
        constexpr std::size_t mostBytes = 200;
        line = line.substr(0, mostBytes);
        return QString::fromUtf8(line.data(), static_cast<qsizetype>(line.size())).toStdString();
    }

    TableWriter m_rows;
    std::vector<std::string> m_names;
    std::map<std::string, std::size_t> m_index;
    std::vector<std::string> m_cells;
    std::vector<Part> m_parts{{0, 0}};
};

} // namespace

bool mayBeJsonLines(std::string_view head)
{
    return trimmed(withoutMark(head)).starts_with('{');
}

Result<bool> isJsonLines(std::string_view head)
{
    head = trimmed(withoutMark(head));
    const bool severalLines = head.find('\n') != head.npos;
    const std::string_view first = takeLine(head);
    if (severalLines && (first == "{" || first == "[" || first.starts_with("[{")))
        return dataProblem(Phrase::tr("this is JSON over several lines"), linePlace(1),
                           Phrase::tr("write one object in each line, without a list around them"));
    return first.starts_with('{') && leavesOf(first).has_value();
}

Result<TableText> jsonLinesTable(std::string_view text)
{
    JsonTable table;
    text = withoutMark(text);
    for (std::int64_t number = 1; !text.empty(); ++number) {
        const std::string_view line = takeLine(text);
        if (!line.empty())
            HOLDBAND_TRY(table.take(line, number));
    }
    return TableText{table.csv()};
}

} // namespace holdband
