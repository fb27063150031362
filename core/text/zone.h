// The only converter between local (wall-clock) times and instants. It reports when a local time is
// missing (clocks went forward) or doubled (clocks went back) and never chooses. Values are cheap
// to copy and may be used from several threads. The rules come from the system's tz database
// through QTimeZone, put into a table once for 1900 … 2200; outside these years the nearest offset
// applies.
#pragma once

#include "core/problem.h"
#include "core/quantity/instant.h"

#include <chrono>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

/// What a clock on the wall shows, to the millisecond; without a zone.
using LocalTime = std::chrono::local_time<Milliseconds>;
using Date = std::chrono::year_month_day;

enum class LocalKind {
    unique,  ///< exists once
    missing, ///< skipped: clocks went forward over it
    doubled, ///< exists twice: clocks went back over it
};

/// The instants that a local time may mean.
struct Resolved {
    LocalKind kind = LocalKind::unique;
    /// unique: the instant. doubled: the first of two. missing: the local time read with the offset
    /// from after the change (the instant is before the change).
    Instant earlier;
    /// unique: the same. doubled: the second. missing: read with the offset from before.
    Instant later;
    /// missing: the instant of the change. Otherwise the same as earlier.
    Instant change;

    /// The instant if there is exactly one.
    std::optional<Instant> one() const
    {
        return kind == LocalKind::unique ? std::optional{earlier} : std::nullopt;
    }
    bool operator==(const Resolved&) const = default;
};

/// A local calendar day, or the part of it inside a span.
struct LocalDay {
    Date date;
    Span span;
    bool operator==(const LocalDay&) const = default;
};

class Zone {
public:
    /// UTC.
    Zone();
    static Zone utc() { return Zone(); }
    /// An IANA name ("America/Denver"), "UTC", or a fixed offset ("+02:00", "-05:00"). Problem:
    /// unknown name, with suggestions.
    static Result<Zone> named(std::string_view name);

    const std::string& name() const;

    Resolved resolve(LocalTime local) const;
    LocalTime toLocal(Instant at) const;
    /// Local minus UTC.
    Milliseconds offsetAt(Instant at) const;
    /// Each offset of the span with the instant from which it applies; the first applies from the
    /// start of the span.
    std::vector<std::pair<Instant, Milliseconds>> offsets(Span span) const;

    Date localDate(Instant at) const;
    /// The first instant of that local day, even if its midnight does not exist.
    Instant startOfDay(Date date) const;
    /// The local days that the span touches, in order, each clipped to the span.
    std::vector<LocalDay> localDays(Span span) const;

    bool operator==(const Zone& other) const { return name() == other.name(); }

private:
    struct Table;
    explicit Zone(std::shared_ptr<const Table> table) : m_table(std::move(table)) {}
    std::shared_ptr<const Table> m_table;
};

} // namespace holdband
