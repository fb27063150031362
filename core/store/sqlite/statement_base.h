// What both kinds of statements share: binding all values, reading the columns of a row. Not for
// use outside core/store.
#pragma once

#include "core/problem.h"
#include "core/quantity/instant.h"

#include <cmath>
#include <optional>
#include <string>

namespace holdband::store {

/// The Problem of a row that holds an invalid value in that column.
Problem invalidValue(const std::string& column, const std::string& path);

/// Values that SQLite accepts but a logbook can't hold (infinite, a time outside the years 1 to
/// 9999) are remembered, and the next step of the statement fails. `Own` is the statement; it has
/// bind(), isNull(), integer(), number() and columnName().
template <typename Own>
class StatementBase {
public:
    /// Binds all values from index 1 on.
    template <typename... Values>
    void bindAll(const Values&... values)
    {
        int index = 0;
        (static_cast<Own&>(*this).bind(++index, values), ...);
    }

    /// Finite, or a Problem at the next step.
    double real(int column) const
    {
        const double value = own().number(column);
        if (std::isfinite(value))
            return value;
        noteInvalid(column);
        return 0.0;
    }
    /// Within the years 1 to 9999, or a Problem at the next step.
    Instant instant(int column) const
    {
        const Instant at = instantFromMs(own().integer(column));
        if (at >= earliestInstant && at <= latestInstant)
            return at;
        noteInvalid(column);
        return {};
    }
    /// In [least, most], or a Problem at the next step.
    std::int64_t integerBetween(int column, std::int64_t least, std::int64_t most) const
    {
        const std::int64_t value = own().integer(column);
        if (value >= least && value <= most)
            return value;
        noteInvalid(column);
        return least;
    }
    std::optional<std::int64_t> optionalInteger(int column) const
    {
        return own().isNull(column) ? std::nullopt : std::optional(own().integer(column));
    }
    std::optional<double> optionalReal(int column) const
    {
        return own().isNull(column) ? std::nullopt : std::optional(real(column));
    }
    std::optional<Instant> optionalInstant(int column) const
    {
        return own().isNull(column) ? std::nullopt : std::optional(instant(column));
    }

protected:
    StatementBase() = default;
    ~StatementBase() = default;
    StatementBase(StatementBase&&) = default;
    StatementBase& operator=(StatementBase&&) = default;

    const std::string& invalidColumn() const { return m_invalid; }
    void forgetInvalid() { m_invalid.clear(); }

private:
    const Own& own() const { return static_cast<const Own&>(*this); }
    void noteInvalid(int column) const
    {
        if (m_invalid.empty())
            m_invalid = own().columnName(column);
    }

    /// The name of the first column with an invalid value. Mutable because reading a column is
    /// const to its callers.
    mutable std::string m_invalid;
};

} // namespace holdband::store
