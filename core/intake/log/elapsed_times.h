// Times of a log that count from a start.
#pragma once

#include "core/intake/log/log.h"
#include "core/problem.h"
#include "core/text/numbers.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace holdband {

class ElapsedTimes {
public:
    explicit ElapsedTimes(TimeUnit unit) : m_unit(unit) {}

    TimeUnit unit() const { return m_unit; }
    /// Milliseconds since the start, or the reason why it is none, in English, for Phrase::tr.
    tl::expected<std::int64_t, const char*> take(const Decimal& number, std::string_view text,
                                                 std::int64_t line);
    /// Adds the start to all times. Problem (data): the numbers fall, so that they count from
    /// several starts; the start is no time, or one of two in that zone.
    Done addStart(const std::string& start, const Zone& zone, std::vector<std::int64_t>& times,
                  const std::string& header) const;

private:
    struct Seen {
        std::int64_t line = 0; ///< 0: never
        std::string text;
    };

    TimeUnit m_unit;
    std::int64_t m_last = 0;
    Seen m_fall;
};

/// The Problem if a log's times count from a start that nobody has said.
Done needStart(const LogRequest& request, TimeUnit unit, const std::string& header);

} // namespace holdband
