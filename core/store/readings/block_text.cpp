#include "core/store/readings/block_text.h"

#include "core/store/readings/reading_key.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace holdband::store {

namespace {

constexpr std::array<double, 7> powersOfTen{1.0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6};

/// Up to here a sum of digits and its quotient by one of the powers are exact, or rounded once.
constexpr double exactUpTo = 9e15;

/// Room for the longest number: "-1.7976931348623157e+308".
constexpr std::size_t longestNumber = 32;

template <typename Number>
void addDigits(std::string& text, Number number)
{
    std::array<char, longestNumber> digits;
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), number).ptr;
    text.append(digits.data(), end);
}

/// A value with few decimals, as loggers write them: faster than the shortest text in general, and
/// the same.
bool addDecimal(std::string& text, double value)
{
    const double size = std::abs(value);
    for (std::size_t decimals = 0; decimals < powersOfTen.size(); ++decimals) {
        const double scaled = size * powersOfTen[decimals];
        if (scaled > exactUpTo)
            return false;
        const auto whole = static_cast<std::int64_t>(scaled + 0.5);
        if (static_cast<double>(whole) / powersOfTen[decimals] != size)
            continue;
        if (value < 0.0)
            text += '-';
        const auto unit = static_cast<std::int64_t>(powersOfTen[decimals]);
        addDigits(text, whole / unit);
        if (decimals == 0)
            return true;
        text += '.';
        const std::size_t before = text.size();
        addDigits(text, whole % unit);
        text.insert(before, decimals - (text.size() - before), '0');
        return true;
    }
    return false;
}

void addValue(std::string& text, double value)
{
    if (!addDecimal(text, value))
        addDigits(text, value);
}

std::optional<std::int64_t> stepOf(const std::vector<std::int64_t>& ms)
{
    const std::int64_t step = ms.size() > 1 ? ms[1] - ms[0] : 0;
    for (std::size_t i = 1; i < ms.size(); ++i) {
        if (ms[i] - ms[i - 1] != step)
            return std::nullopt;
    }
    return step;
}

/// Reads the text from its start to its end.
class BlockScan {
public:
    explicit BlockScan(std::string_view text) : m_at(text.data()), m_end(m_at + text.size()) {}

    bool skip(char c)
    {
        if (m_at == m_end || *m_at != c)
            return false;
        ++m_at;
        return true;
    }

    bool whole(std::int64_t& number)
    {
        const auto [end, error] = std::from_chars(m_at, m_end, number);
        m_at = end;
        return error == std::errc{};
    }

    bool value(double& number)
    {
        if (shortDecimal(number))
            return true;
        const auto [end, error] = std::from_chars(m_at, m_end, number);
        m_at = end;
        return error == std::errc{} && std::isfinite(number);
    }

    bool atEnd() const { return m_at == m_end; }

private:
    /// At most fifteen digits and six decimals, which one division rounds as it should.
    bool shortDecimal(double& number)
    {
        const char* at = m_at;
        const bool negative = at != m_end && *at == '-';
        at += negative ? 1 : 0;
        std::int64_t digits = 0;
        int count = 0;
        const auto take = [&] {
            for (; at != m_end && *at >= '0' && *at <= '9' && count <= 15; ++at, ++count)
                digits = 10 * digits + (*at - '0');
        };
        take();
        const int before = count;
        if (at != m_end && *at == '.') {
            ++at;
            take();
        }
        const auto decimals = static_cast<std::size_t>(count - before);
        const bool ends = at != m_end && (*at == ',' || *at == ']');
        if (before == 0 || count > 15 || decimals >= powersOfTen.size() || !ends)
            return false;
        const double size = static_cast<double>(digits) / powersOfTen[decimals];
        number = negative ? -size : size;
        m_at = at;
        return true;
    }

    const char* m_at;
    const char* m_end;
};

/// A damaged number must not make a time overflow.
bool isShort(std::int64_t ms)
{
    return ms >= 0 && ms < (std::int64_t{1} << blockBits);
}

/// A value, or a time and a value.
bool readOne(BlockScan& scan, std::int64_t firstAt, std::optional<std::int64_t> step,
             std::int64_t position, std::vector<std::int64_t>& ms, std::vector<double>& values)
{
    std::int64_t after = step ? *step * position : 0;
    double value = 0.0;
    const bool read = step ? scan.value(value)
                           : scan.skip('[') && scan.whole(after) && scan.skip(',') &&
                                 scan.value(value) && scan.skip(']');
    if (!read || (!step && !isShort(after)))
        return false;
    ms.push_back(firstAt + after);
    values.push_back(value);
    return true;
}

} // namespace

BlockText blockText(const std::vector<std::int64_t>& ms, const std::vector<double>& values)
{
    BlockText block{ms.front(), stepOf(ms), "["};
    block.json.reserve(values.size() * (block.step ? 8 : 20));
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (i > 0)
            block.json += ',';
        if (!block.step) {
            block.json += '[';
            addDigits(block.json, ms[i] - block.firstAt);
            block.json += ',';
        }
        addValue(block.json, values[i]);
        if (!block.step)
            block.json += ']';
    }
    block.json += ']';
    return block;
}

bool readBlockText(std::int64_t firstAt, std::optional<std::int64_t> step, std::string_view json,
                   std::vector<std::int64_t>& ms, std::vector<double>& values)
{
    if (firstAt < 0 || firstAt >= instantRange || (step && !isShort(*step)))
        return false;
    BlockScan scan(json);
    if (!scan.skip('['))
        return false;
    for (std::int64_t position = 0; position == 0 || scan.skip(','); ++position) {
        if (!readOne(scan, firstAt, step, position, ms, values))
            return false;
    }
    return scan.skip(']') && scan.atEnd();
}

} // namespace holdband::store
