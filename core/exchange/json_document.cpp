#include "core/exchange/json_document.h"

#include "core/text/phrase.h"

#include <algorithm>

namespace holdband::exchange {

namespace {

std::string lineAndColumn(const std::string& text, std::size_t byte)
{
    const std::size_t end = std::min(byte > 0 ? byte - 1 : 0, text.size());
    const auto lines =
        std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(end), '\n');
    const std::size_t lineStart = end == 0 ? std::string::npos : text.rfind('\n', end - 1);
    const std::size_t column = lineStart == std::string::npos ? end + 1 : end - lineStart;
    return Phrase::tr("line %1, column %2").with(std::to_string(lines + 1), std::to_string(column));
}

/// Tracks the keys of the open objects to find duplicates.
class KeyWatch {
public:
    bool operator()(int, Json::parse_event_t event, Json& value)
    {
        if (event == Json::parse_event_t::object_start)
            m_open.emplace_back();
        else if (event == Json::parse_event_t::object_end)
            m_open.pop_back();
        else if (event == Json::parse_event_t::key && !m_open.back().insert(value).second)
            m_doubled = value.get<std::string>();
        return true;
    }

    const std::optional<std::string>& doubled() const { return m_doubled; }

private:
    std::vector<std::set<std::string>> m_open;
    std::optional<std::string> m_doubled;
};

} // namespace

Result<Json> parseJson(const std::string& text, const std::string& fileName)
{
    KeyWatch watch;
    try {
        Json document = Json::parse(text, std::ref(watch));
        if (watch.doubled())
            return dataProblem(
                Phrase::tr("the key \"%1\" is there twice in one object").with(*watch.doubled()),
                fileName, Phrase::tr("leave only one of them"));
        return document;
    } catch (const Json::parse_error& error) {
        return dataProblem(Phrase::tr("this is no JSON"),
                           fileName + ", " + lineAndColumn(text, error.byte),
                           Phrase::tr("look for a missing comma, quote or bracket there"));
    } catch (const Json::exception&) {
        return dataProblem(Phrase::tr("the JSON holds a number or text that can't be read"),
                           fileName);
    }
}

} // namespace holdband::exchange
