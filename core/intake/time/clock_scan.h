// Scans the parts of a time in a log: a date, a time of day, an offset. Grammar only; stamps.h
// decides what the numbers mean.
#pragma once

#include "core/quantity/instant.h"

#include <cstdint>
#include <optional>
#include <string_view>

namespace holdband {

/// A position in a text that moves forward.
class TextCursor {
public:
    explicit TextCursor(std::string_view text) : m_at(text.data()), m_end(text.data() + text.size())
    {
    }
    bool atEnd() const { return m_at == m_end; }
    char peek() const { return atEnd() ? '\0' : *m_at; }
    void skip() { ++m_at; }
    bool take(char c)
    {
        if (peek() != c || atEnd())
            return false;
        ++m_at;
        return true;
    }
    void skipSpaces()
    {
        while (peek() == ' ')
            ++m_at;
    }
    bool onDigit() const { return !atEnd() && *m_at >= '0' && *m_at <= '9'; }
    bool onLetter() const
    {
        return !atEnd() && ((*m_at >= 'a' && *m_at <= 'z') || (*m_at >= 'A' && *m_at <= 'Z'));
    }
    /// Reads up to `most` digits and sets `width` to their count (0 if there are none).
    int digits(int most, int& width)
    {
        int value = 0;
        for (width = 0; width < most && onDigit(); ++width, ++m_at)
            value = value * 10 + (*m_at - '0');
        return value;
    }
    std::string_view rest() const { return {m_at, static_cast<std::size_t>(m_end - m_at)}; }

private:
    const char* m_at;
    const char* m_end;
};

struct ScannedDate {
    int first = 0;
    int second = 0;
    int third = 0;
    int firstWidth = 0;
    int thirdWidth = 0;
    bool yearFirst = false; ///< four digits first: year, month, day
    bool named = false;     ///< with a month's name: day, month, year
    bool compact = false;   ///< 20260307
};

struct ScannedClock {
    std::int32_t msOfDay = 0;
    std::optional<Milliseconds> offset; ///< local minus UTC
};

/// A date; moves the cursor past it. Absent: there is none, and the cursor may have moved.
std::optional<ScannedDate> scanDate(TextCursor& cursor);

/// "6:30", "06:30:15.250", "6:30 PM", with "Z", "UTC", "UTC+1", "+02:00", "-0700" or nothing after
/// it. Fractions of a second to the nearest millisecond.
std::optional<ScannedClock> scanClock(TextCursor& cursor);

/// As scanClock, with the separator between date and time; after a compact date also "063015".
std::optional<ScannedClock> scanClockBehindDate(TextCursor& cursor, bool compactDate);

} // namespace holdband
