#include "core/intake/time/header_zone.h"

#include "core/text/ascii.h"
#include "core/text/name_suggestions.h"

#include <algorithm>
#include <array>

namespace holdband {

namespace {

bool isDigit(char c)
{
    return c >= '0' && c <= '9';
}

bool isLetter(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

/// Bytes of letters beyond ASCII are part of their word.
bool isOfWord(char c)
{
    return isDigit(c) || isLetter(c) || (static_cast<unsigned char>(c) & 0x80) != 0;
}

std::string lower(std::string_view text)
{
    std::string copy(text);
    std::transform(copy.begin(), copy.end(), copy.begin(), asciiLower);
    return copy;
}

/// Replaces the minus sign and the en dash, which headers have before offsets, with a hyphen.
std::string withPlainMinus(std::string_view header)
{
    std::string text(header);
    for (const std::string_view sign : {"\u2212", "\u2013"}) {
        for (std::size_t at = text.find(sign); at != text.npos; at = text.find(sign, at))
            text.replace(at, sign.size(), "-");
    }
    return text;
}

/// Shared by several zones, or by one zone in one half of the year only.
constexpr std::array<std::string_view, 47> abbreviations{
    "acdt", "acst", "adt",  "aedt", "aest", "akdt", "akst", "ast",  "awst", "brt",  "bst", "cat",
    "cdt",  "cest", "cet",  "cst",  "ct",   "eat",  "edt",  "eest", "eet",  "est",  "et",  "hkt",
    "hst",  "ist",  "jst",  "kst",  "mdt",  "mesz", "met",  "mez",  "msk",  "mst",  "mt",  "ndt",
    "nst",  "nzdt", "nzst", "pdt",  "pkt",  "pst",  "pt",   "sast", "sgt",  "west", "wet"};

/// Also everyday words: these are abbreviations only in capitals or in brackets.
constexpr std::array<std::string_view, 9> everydayText{"cat", "ct", "eat", "et",  "ist",
                                                       "met", "mt", "pt",  "west"};

template <std::size_t Size>
bool isAmong(const std::array<std::string_view, Size>& words, std::string_view word)
{
    return std::find(words.begin(), words.end(), word) != words.end();
}

/// Reads one header from word to word.
class ZoneScan {
public:
    ZoneScan(std::string_view header, std::vector<Zone>& zones, std::vector<std::string>& unclear)
        : m_text(withPlainMinus(header)), m_zones(zones), m_unclear(unclear)
    {
    }

    void run()
    {
        for (std::size_t at = 0; at < m_text.size();)
            at = isOfWord(m_text[at]) ? takeWord(at) : takeSign(at);
    }

private:
    char peek(std::size_t at) const { return at < m_text.size() ? m_text[at] : '\0'; }
    bool isSign(std::size_t at) const { return peek(at) == '+' || peek(at) == '-'; }
    bool opensBracket(std::size_t at) const
    {
        return at > 0 && (m_text[at - 1] == '(' || m_text[at - 1] == '[');
    }
    bool closesBracket(std::size_t at) const { return peek(at) == ')' || peek(at) == ']'; }

    std::size_t endOfWord(std::size_t at) const
    {
        while (isOfWord(peek(at)))
            ++at;
        return at;
    }

    /// Returns the position after the word.
    std::size_t takeWord(std::size_t from)
    {
        if (const std::size_t end = takeName(from); end > from)
            return end;
        const std::size_t end = endOfWord(from);
        const std::string_view word = std::string_view(m_text).substr(from, end - from);
        const std::string name = lower(word);
        if (name == "utc" || name == "gmt")
            return takeUtc(from, end);
        if (word == "Z")
            m_zones.push_back(Zone::utc());
        else if (isAmong(abbreviations, name) && isAbbreviation(from, end))
            m_unclear.emplace_back(word);
        return end;
    }

    bool isAbbreviation(std::size_t from, std::size_t end) const
    {
        const std::string word = m_text.substr(from, end - from);
        const bool capitals =
            std::none_of(word.begin(), word.end(), [](char c) { return c >= 'a' && c <= 'z'; });
        const bool bracketed = opensBracket(from) && closesBracket(end);
        const bool last = from > 0 && end == m_text.size() && !isAmong(everydayText, lower(word));
        return capitals || bracketed || last;
    }

    /// "America/Denver": a name with a slash that the system knows.
    std::size_t takeName(std::size_t from)
    {
        std::size_t end = from;
        while (isLetter(peek(end)) || isDigit(peek(end)) || isSign(end) || peek(end) == '_' ||
               peek(end) == '/')
            ++end;
        const std::string_view name = std::string_view(m_text).substr(from, end - from);
        if (name.find('/') == name.npos)
            return from;
        const auto zone = Zone::named(name);
        if (!zone)
            return from;
        m_zones.push_back(*zone);
        return end;
    }

    /// After "UTC" or "GMT": an offset, or nothing.
    std::size_t takeUtc(std::size_t from, std::size_t end)
    {
        std::size_t sign = end;
        while (peek(sign) == ' ')
            ++sign;
        if (!isSign(sign) || !isDigit(peek(sign + 1))) {
            m_zones.push_back(Zone::utc());
            return end;
        }
        const Offset offset = offsetAt(sign);
        if (offset.zone && !isOfWord(peek(offset.end)))
            m_zones.push_back(*offset.zone);
        else
            m_unclear.push_back(m_text.substr(from, offset.end - from));
        return endOfWord(offset.end);
    }

    /// An offset without UTC or GMT, which must be clear: "+01:00", "-0700", "(+2)".
    std::size_t takeSign(std::size_t at)
    {
        const bool behindWord = at > 0 && isOfWord(m_text[at - 1]);
        if (!isSign(at) || !isDigit(peek(at + 1)) || behindWord)
            return at + 1;
        const Offset offset = offsetAt(at);
        const bool alone = opensBracket(at) && closesBracket(offset.end);
        if (offset.zone && (offset.hasMinutes || alone) && !isOfWord(peek(offset.end)))
            m_zones.push_back(*offset.zone);
        return endOfWord(offset.end);
    }

    struct Offset {
        std::optional<Zone> zone;
        bool hasMinutes = false;
        std::size_t end = 0;
    };

    /// "+1", "-05", "+530", "-0700", "+05:30"; the sign is at `at`.
    Offset offsetAt(std::size_t at) const
    {
        Offset offset;
        std::string digits;
        std::size_t end = at + 1;
        for (; isDigit(peek(end)); ++end)
            digits += m_text[end];
        std::string hour = digits.size() > 2 ? digits.substr(0, digits.size() - 2) : digits;
        std::string minute = digits.size() > 2 ? digits.substr(digits.size() - 2) : "00";
        offset.hasMinutes = digits.size() > 2;
        if (digits.size() <= 2 && peek(end) == ':' && isDigit(peek(end + 1)) &&
            isDigit(peek(end + 2))) {
            minute = m_text.substr(end + 1, 2);
            offset.hasMinutes = true;
            end += 3;
        }
        offset.end = end;
        if (hour.size() == 1)
            hour.insert(0, "0");
        const bool quarter = minute == "00" || minute == "15" || minute == "30" || minute == "45";
        if (!quarter || hour.size() != 2)
            return offset;
        const bool none = hour == "00" && minute == "00";
        auto zone = none ? Zone::utc() : Zone::named(m_text[at] + hour + ":" + minute);
        if (zone)
            offset.zone = *zone;
        return offset;
    }

    std::string m_text;
    std::vector<Zone>& m_zones;
    std::vector<std::string>& m_unclear;
};

} // namespace

HeaderZone headerZone(const std::vector<std::string_view>& headers)
{
    std::vector<Zone> zones;
    std::vector<std::string> unclear;
    for (const std::string_view header : headers)
        ZoneScan(header, zones, unclear).run();
    HeaderZone said;
    if (zones.empty()) {
        said.unclear = unclear.empty() ? std::string() : unclear.front();
        return said;
    }
    const bool same = std::all_of(zones.begin(), zones.end(),
                                  [&](const Zone& zone) { return zone == zones.front(); });
    if (same) {
        said.zone = zones.front();
        return said;
    }
    std::vector<std::string> names;
    for (const Zone& zone : zones)
        names.push_back(zoneText(zone));
    said.unclear = joined(names);
    return said;
}

std::string zoneText(const Zone& zone)
{
    const std::string& name = zone.name();
    if (name.starts_with('-'))
        return "UTC\u2212" + name.substr(1);
    return name.starts_with('+') ? "UTC" + name : name;
}

} // namespace holdband
