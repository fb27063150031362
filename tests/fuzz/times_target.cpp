// Times in logs. What is read from any text is a possible time and can be written and read again; a
// pattern reads what it describes; local times in any zone become instants that show the same local
// times. The first byte chooses which.
#include "core/intake/time/date_order.h"
#include "core/intake/time/doubled_hours.h"
#include "core/intake/time/header_zone.h"
#include "core/intake/time/stamps.h"
#include "core/intake/time/time_pattern.h"
#include "core/text/times.h"
#include "tests/fuzz/fuzz_one.h"

#include <array>
#include <vector>

namespace holdband::fuzz {

namespace {

constexpr std::int64_t dayMs = 86'400'000;
constexpr std::int64_t firstMs = 631'152'000'000; // 1990-01-01
constexpr std::int64_t endMs = 4'133'980'800'000; // 2101-01-01

LocalTime localFromMs(std::int64_t ms)
{
    return LocalTime{Milliseconds{ms}};
}

void expectReadAgain(Instant at)
{
    const std::string utc = rfc3339Utc(at);
    const auto parsed = parseRfc3339(utc);
    expect(parsed && *parsed == at, "a written time is read as the same", utc);
    const auto stamp = scanStamp(utc);
    expect(stamp && *stamp == Stamp{StampKind::instant, toMs(at)},
           "a log's time is read as the same", utc);
}

void expectPossible(const Stamp& stamp, std::string_view text)
{
    const std::string shown(text);
    if (stamp.kind == StampKind::loose) {
        const LooseTime time = unpacked(stamp.value);
        expect(packed(time) == stamp.value, "numbers are packed and unpacked", shown);
        expect(time.msOfDay >= 0 && time.msOfDay < dayMs, "a time of day is in a day", shown);
        bool any = false;
        for (const DateOrder order : allDateOrders) {
            const auto local = inOrder(time, order);
            any |= local.has_value();
            const std::int64_t ms = local ? local->time_since_epoch().count() : firstMs;
            expect(ms >= firstMs && ms < endMs, "a date is of 1990 to 2100", shown);
        }
        expect(any, "three numbers are a date in one order at least", shown);
        return;
    }
    // An offset may move a local time of 1990 to 2100 by less than a day.
    expect(stamp.value >= firstMs - dayMs && stamp.value < endMs + dayMs,
           "a time is of 1990 to 2100", shown);
    if (stamp.kind == StampKind::instant && stamp.value >= firstMs && stamp.value < endMs)
        expectReadAgain(instantFromMs(stamp.value));
}

/// Made once: reading a zone's rules takes longer than everything else here.
const Zone& someZone(std::size_t which)
{
    static const std::vector<Zone> zones = [] {
        std::vector<Zone> named;
        for (const char* name : {"America/New_York", "Europe/Berlin", "Australia/Lord_Howe",
                                 "Asia/Kathmandu", "UTC", "America/St_Johns", "-05:00"}) {
            const auto zone = Zone::named(name);
            expect(zone.has_value(), "the zone is known");
            named.push_back(*zone);
        }
        return named;
    }();
    return zones[which % zones.size()];
}

/// A byte: a zone; line 1: a pattern; line 2: a time.
void readAnything(Bytes bytes)
{
    const Zone& zone = someZone(bytes.byte());
    const std::string_view pattern = bytes.line();
    const std::string_view text = bytes.line();
    if (const auto stamp = scanStamp(text))
        expectPossible(*stamp, text);
    if (const auto compiled = TimePattern::compile(pattern)) {
        if (const auto stamp = compiled->read(text))
            expectPossible(*stamp, text);
    }
    (void)looksLikeTime(text);
    (void)isDateAlone(text);
    (void)isClockAlone(text);
    if (pattern.find('/') == pattern.npos && text.find('/') == text.npos)
        (void)headerZone({pattern, text}); // names of zones take long, and are not the matter here
    if (const auto at = parseTime(text, zone)) {
        const std::string iso = localIso(*at, zone);
        const auto again = parseTime(iso, zone);
        expect(again && *again == *at, "a local time is written and read as the same", iso);
    }
    (void)parseTypedTime(text, zone, instantFromMs(1'772'900'000'000));
}

std::string digits(int value, int width)
{
    std::string text = std::to_string(value);
    const auto wanted = static_cast<std::size_t>(width);
    return text.size() < wanted ? std::string(wanted - text.size(), '0') + text : text;
}

/// A pattern, and a time written by it.
struct Written {
    std::string pattern;
    std::string text;

    void add(const char* letters, const std::string& value)
    {
        pattern += letters;
        text += value;
    }
};

constexpr std::array monthNames{"January",   "February", "March",    "April",
                                "May",       "June",     "July",     "August",
                                "September", "October",  "November", "December"};

void addDate(Bytes& bytes, Date date, char separator, Written& written)
{
    const int year = static_cast<int>(date.year());
    const int month = static_cast<int>(static_cast<unsigned>(date.month()));
    const int day = static_cast<int>(static_cast<unsigned>(date.day()));
    const std::uint8_t how = bytes.byte();
    const std::string name = monthNames[static_cast<std::size_t>(month) - 1];
    for (int piece = 0; piece < 3; ++piece) {
        if (piece > 0)
            written.add(std::string(1, separator).c_str(), std::string(1, separator));
        switch ((piece + how) % 3) {
        case 0:
            year >= 2000 && year < 2100 && (how & 4) ? written.add("yy", digits(year % 100, 2))
                                                     : written.add("yyyy", digits(year, 4));
            break;
        case 1:
            switch (how >> 3 & 3) {
            case 0:
                written.add("MM", digits(month, 2));
                break;
            case 1:
                written.add("M", digits(month, 1));
                break;
            case 2:
                written.add("MMM", name.substr(0, 3));
                break;
            default:
                written.add("MMMM", name);
            }
            break;
        default:
            how & 32 ? written.add("d", digits(day, 1)) : written.add("dd", digits(day, 2));
        }
    }
}

/// Returns the part of `ms` that is written.
std::int64_t addClock(Bytes& bytes, std::int64_t ms, Written& written)
{
    const std::uint8_t how = bytes.byte();
    const int hour = static_cast<int>(ms / 3'600'000);
    const int minute = static_cast<int>(ms / 60'000 % 60);
    const int second = static_cast<int>(ms / 1'000 % 60);
    const int half = hour % 12 == 0 ? 12 : hour % 12;
    const bool twelve = how & 1;
    written.add(twelve ? "hh" : "HH", digits(twelve ? half : hour, 2));
    written.add(":", ":");
    how & 2 ? written.add("m", digits(minute, 1)) : written.add("mm", digits(minute, 2));
    std::int64_t unit = 60'000;
    if (how & 4) {
        written.add("'.'ss", "." + digits(second, 2));
        unit = 1'000;
        if (how & 8) {
            written.add(",zzz", "," + digits(static_cast<int>(ms % 1'000), 3));
            unit = 1;
        }
    }
    if (twelve)
        written.add(" a", hour < 12 ? " am" : " PM");
    return ms / unit * unit;
}

void readByPattern(Bytes bytes)
{
    const std::int64_t day =
        static_cast<std::int64_t>(bytes.below(static_cast<std::size_t>((endMs - firstMs) / dayMs)));
    const std::int64_t clock =
        (static_cast<std::int64_t>(bytes.word()) << 16 | bytes.word()) % dayMs;
    const Date date(std::chrono::floor<std::chrono::days>(localFromMs(firstMs + day * dayMs)));
    constexpr std::string_view separators = "-/._, ";
    Written written;
    addDate(bytes, date, separators[bytes.byte() % separators.size()], written);
    written.add("' at 'T", " at T");
    std::int64_t expected = firstMs + day * dayMs + addClock(bytes, clock, written);
    const std::uint8_t offset = bytes.byte();
    if (offset & 1) {
        const int minutes = offset % 57 * 15 - 12 * 60; // −12:00 … +02:00, in quarters
        const int size = std::abs(minutes);
        written.add("x", (minutes < 0 ? "-" : "+") + digits(size / 60, 2) +
                             (offset & 2 ? ":" : "") + digits(size % 60, 2));
        expected -= std::int64_t{minutes} * 60'000;
    }
    const std::string shown = written.pattern + "\n" + written.text;
    const auto pattern = TimePattern::compile(written.pattern);
    expect(pattern.has_value(), "a pattern of known pieces is one", shown);
    const auto stamp = pattern->read(written.text);
    expect(stamp.has_value(), "a pattern reads what it describes", shown);
    const StampKind kind = offset & 1 ? StampKind::instant : StampKind::local;
    expect(*stamp == Stamp{kind, expected}, "a pattern reads the time that was written",
           shown + "\n" + std::to_string(stamp->value) + ", expected " + std::to_string(expected));
}

/// Rows of local times about the changes of clocks, and instants among them.
void resolveLocalRows(Bytes bytes)
{
    const Zone& zone = someZone(bytes.byte());
    RowTimes rows;
    std::int64_t ms = 1'761'436'800'000 + std::int64_t{bytes.word()} * 600'000; // October 2025 on
    while (!bytes.atEnd() && rows.value.size() < 400) {
        const std::uint8_t step = bytes.byte();
        ms += (std::int64_t{step} - 40) * 300'000;
        rows.kind.push_back(step == 40 ? StampKind::instant : StampKind::local);
        rows.value.push_back(ms);
        rows.line.push_back(static_cast<std::uint32_t>(rows.line.size() + 2));
    }
    const RowTimes asWritten = rows;
    const auto resolved = resolveRows(rows, zone);
    if (!resolved)
        return;
    std::size_t missing = 0;
    for (std::size_t i = 0; i < rows.value.size(); ++i) {
        if (missing < resolved->missing.size() && resolved->missing[missing].row == i) {
            ++missing;
            const auto kind = zone.resolve(localFromMs(asWritten.value[i])).kind;
            expect(kind == LocalKind::missing, "a missing time doesn't exist");
            continue;
        }
        const auto local = zone.toLocal(instantFromMs(rows.value[i])).time_since_epoch().count();
        expect(asWritten.kind[i] == StampKind::instant ? rows.value[i] == asWritten.value[i]
                                                       : local == asWritten.value[i],
               "an instant shows the local time that was written", std::to_string(i));
    }
    expect(missing == resolved->missing.size(), "missing rows are in order");
}

} // namespace

void fuzzOne(std::span<const std::uint8_t> input)
{
    Bytes bytes(input);
    switch (bytes.byte() % 3) {
    case 0:
        return readAnything(bytes);
    case 1:
        return readByPattern(bytes);
    default:
        return resolveLocalRows(bytes);
    }
}

} // namespace holdband::fuzz
