// Collects the rows of a log while it is read: times and values in the file's order, and the
// rejected ones.
#pragma once

#include "core/intake/csv/dialect.h"
#include "core/intake/csv/tokens.h"
#include "core/intake/log/deduplicate.h"
#include "core/intake/log/log.h"
#include "core/intake/log/units.h"
#include "core/intake/log/values.h"
#include "core/intake/time/date_order.h"
#include "core/intake/time/doubled_hours.h"
#include "core/intake/time/time_pattern.h"
#include "core/problem.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

/// The first rejected rows are stored, all are counted.
class Rejects {
public:
    /// `reason()` is called only if the row is stored, so that the text of all others costs
    /// nothing.
    template <typename Reason>
    void add(std::int64_t line, std::string_view column, std::string_view text,
             const Reason& reason)
    {
        ++m_total;
        if (m_rows.size() < maxRejectedStored)
            keep(line, column, text, reason());
    }
    void moveInto(LogFile& file);

private:
    void keep(std::int64_t line, std::string_view column, std::string_view text,
              std::string reason);

    std::vector<RejectedRow> m_rows;
    std::int64_t m_total = 0;
};

/// A column to be read, with its chosen unit. Of a long log, one of the names in it: `index` is
/// then the column of the values.
struct ReadColumn {
    std::size_t index = 0; ///< in the header
    LogColumn column;      ///< without readings
    ChosenUnit unit;
};

/// Finds the column for each row of a long log.
class NamedRows {
public:
    /// `nameColumn`: in the header.
    NamedRows(std::size_t nameColumn, const std::vector<ReadColumn>& columns);

    std::size_t column() const { return m_column; }
    /// The index of the column for that name; absent: not wanted.
    std::optional<std::size_t> which(std::string_view name);
    std::vector<std::string> ignored() const { return {m_ignored.begin(), m_ignored.end()}; }

private:
    static constexpr std::size_t mostIgnored = 200;

    std::size_t m_column;
    std::map<std::string, std::size_t, std::less<>> m_known; ///< by folded name
    std::string m_lastName;
    std::optional<std::size_t> m_last;
    bool m_any = false;
    std::set<std::string, std::less<>> m_ignored;
};

/// The unit of each row of a long log that has a column for it.
class RowUnits {
public:
    RowUnits(std::size_t unitColumn, std::vector<ReadColumn>& columns);

    std::size_t column() const { return m_column; }
    /// The unit that the text names, if it suits the column `which`; else a text with the reason.
    tl::expected<ReadingUnit, std::string> read(std::string_view text, std::size_t which) const;
    /// The value in the column's unit, which is the unit of its first value.
    Decimal inUnitOfColumn(Decimal number, ReadingUnit unit, std::size_t which);
    /// Sentences about what was converted.
    std::vector<std::string> remarks() const;

private:
    std::size_t m_column;
    std::vector<ReadColumn>& m_columns;
    std::vector<bool> m_settled;           ///< by column: its first value was read
    std::vector<std::int64_t> m_converted; ///< by column: how many values
};

class LogRowAccumulator {
public:
    LogRowAccumulator(const LogRequest& request, Dialect dialect, std::vector<ReadColumn> columns,
                      std::optional<TimePattern> pattern);

    /// The log is long: the column `column` names the sensor of each row.
    void setNameColumn(std::size_t column);
    /// The column `column` has the unit of each row's value.
    void setUnitColumn(std::size_t column);

    /// Reserves memory for about that many rows.
    void expect(std::size_t rows);
    void take(const CsvRow& row);
    std::int64_t rowsRead() const { return m_rowsRead; }

    /// Decides the times and the decimal sign, and fills the file's columns. Empties this
    /// accumulator.
    Done finishInto(LogFile& file);

private:
    bool hasRightWidth(const CsvRow& row);
    void takeNamed(const CsvRow& row);
    bool takeTime(const CsvRow& row);
    bool takeLoose(const LooseTime& time, const CsvRow& row);
    void takeValue(const CsvRow& row, std::size_t which);
    std::string said(const char* reason) const;
    const char* whyNot(std::optional<Decimal>& number, const CsvRow& row, std::size_t which);
    std::int64_t lineOf(const CsvRow& row) const;
    Done checkNamesKnown() const;
    std::string_view timeText(const CsvRow& row);
    Done settleOrder(LogFile& file);
    Result<Zone> zoneOfTimes(LogFile& file) const;
    Done resolve(LogFile& file);
    Done fillColumns(LogFile& file);
    Done judgeValues(LogColumn& column, const ChosenUnit& unit, LogFile& file);

    const LogRequest& m_request;
    Dialect m_dialect;
    std::string m_timeHeader;
    std::vector<ReadColumn> m_columns;
    std::vector<ColumnInFileOrder> m_values; ///< as m_columns
    std::optional<TimePattern> m_pattern;
    std::optional<NamedRows> m_named;
    std::optional<RowUnits> m_units;
    std::string m_reason; ///< of the value rejected last
    RowTimes m_times;
    DateOrderVotes m_votes;
    NumberCells m_numbers;
    Rejects m_rejects;
    std::string m_joined; ///< date and time of day of two columns
    std::int64_t m_rowsRead = 0;
    bool m_anyLocal = false;
};

/// The header of the time column: "Logged", or "Date+Time" for two.
std::string timeHeader(const Dialect& dialect);

} // namespace holdband
