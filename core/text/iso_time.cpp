#include "core/text/iso_time.h"

namespace holdband {

using namespace std::chrono;

namespace {

/// Reads a text from its front; after the first failure every read fails.
class Scanner {
public:
    explicit Scanner(std::string_view text) : m_rest(text) {}

    bool failed() const { return m_failed; }
    bool atEnd() const { return m_rest.empty(); }
    bool nextIs(char c) const { return !m_rest.empty() && m_rest.front() == c; }
    bool nextIsDigit() const
    {
        return !m_rest.empty() && m_rest.front() >= '0' && m_rest.front() <= '9';
    }

    int digits(int count)
    {
        int value = 0;
        for (int i = 0; i < count; ++i) {
            if (!nextIsDigit()) {
                m_failed = true;
                return 0;
            }
            value = value * 10 + (take() - '0');
        }
        return value;
    }

    /// One character of the list; '\0' if the next one is not in it.
    char oneOf(std::string_view list)
    {
        if (m_rest.empty() || list.find(m_rest.front()) == list.npos) {
            m_failed = true;
            return '\0';
        }
        return take();
    }

    char take()
    {
        const char c = m_rest.front();
        m_rest.remove_prefix(1);
        return c;
    }

private:
    std::string_view m_rest;
    bool m_failed = false;
};

/// The digits after the decimal sign of the seconds, to the nearest millisecond.
Milliseconds scanFraction(Scanner& scan)
{
    int thousandths = 0;
    int place = 0;
    bool up = false;
    for (; scan.nextIsDigit(); ++place) {
        const int digit = scan.take() - '0';
        if (place < 3)
            thousandths = thousandths * 10 + digit;
        else if (place == 3)
            up = digit >= 5;
    }
    if (place == 0)
        scan.digits(1); // fails
    for (; place < 3; ++place)
        thousandths *= 10;
    return Milliseconds{thousandths + (up ? 1 : 0)};
}

std::optional<Milliseconds> scanOffset(Scanner& scan)
{
    if (scan.atEnd())
        return std::nullopt;
    const char sign = scan.oneOf("Zz+-");
    if (sign == 'Z' || sign == 'z')
        return Milliseconds{0};
    const int hour = scan.digits(2);
    scan.oneOf(":");
    const int minute = scan.digits(2);
    if (hour > 23 || minute > 59)
        scan.oneOf({}); // fails
    const Milliseconds size = hours{hour} + minutes{minute};
    return sign == '-' ? -size : size;
}

bool isLeapSecond(const IsoTime& time)
{
    const LocalTime utc = time.local - time.offset.value_or(Milliseconds{0});
    return floor<seconds>(utc - floor<days>(utc)) == seconds{0}; // 23:59:60 is the next 00:00:00
}

} // namespace

int IsoTime::year() const
{
    const LocalTime shown = leapSecond ? local - seconds{1} : local;
    return static_cast<int>(year_month_day{floor<days>(shown)}.year());
}

std::optional<IsoTime> scanIsoTime(std::string_view text)
{
    Scanner scan(text);
    const year y{scan.digits(4)};
    scan.oneOf("-");
    const month m{static_cast<unsigned>(scan.digits(2))};
    scan.oneOf("-");
    const day d{static_cast<unsigned>(scan.digits(2))};
    scan.oneOf("Tt ");
    const int hour = scan.digits(2);
    scan.oneOf(":");
    const int minute = scan.digits(2);
    IsoTime time;
    int second = 0;
    Milliseconds fraction{0};
    if (scan.nextIs(':')) {
        scan.take();
        second = scan.digits(2);
        time.hasSeconds = true;
        if (scan.nextIs('.')) {
            scan.take();
            fraction = scanFraction(scan);
        }
    }
    time.offset = scanOffset(scan);
    if (scan.failed() || !scan.atEnd() || !(y / m / d).ok() || hour > 23 || minute > 59 ||
        second > 60)
        return std::nullopt;
    time.local = local_days{y / m / d} + hours{hour} + minutes{minute} + seconds{second} + fraction;
    time.leapSecond = second == 60;
    if (time.leapSecond && !isLeapSecond(time))
        return std::nullopt;
    return time;
}

} // namespace holdband
