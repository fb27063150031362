// Collects the rows of a log while it is read: times and values in the file's order, and the
// rejected ones.
#pragma once

#include "core/intake/csv/dialect.h"
#include "core/intake/csv/tokens.h"
#include "core/intake/log/deduplicate.h"
#include "core/intake/log/elapsed_times.h"
#include "core/intake/log/log.h"
#include "core/intake/log/named_rows.h"
#include "core/intake/log/read_column.h"
#include "core/intake/log/rejects.h"
#include "core/intake/log/row_units.h"
#include "core/intake/log/units.h"
#include "core/intake/log/values.h"
#include "core/intake/time/date_order.h"
#include "core/intake/time/doubled_hours.h"
#include "core/intake/time/time_pattern.h"
#include "core/problem.h"

#include <limits>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

/// A row without a value in a column.
inline constexpr double noValue = std::numeric_limits<double>::quiet_NaN();

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
    /// The decimal sign with which the log must be read again: later rows showed that a sign read
    /// as decimal separates thousands.
    std::optional<char> signToReadAgain() const;

    /// Decides the times and the decimal sign, and fills the file's columns. Empties this
    /// accumulator.
    Done finishInto(LogFile& file);

private:
    bool hasRightWidth(const CsvRow& row);
    void takeNamed(const CsvRow& row);
    bool takeTime(const CsvRow& row);
    tl::expected<Stamp, const char*> stampOf(const CsvRow& row, std::string_view text);
    tl::expected<Stamp, const char*> numberStamp(const CsvRow& row, std::string_view text);
    bool takeLoose(const LooseTime& time, const CsvRow& row);
    bool suitsOtherZones(std::string_view zone);
    std::string zoneDiffers(std::string_view zone) const;
    void takeValue(const CsvRow& row, std::size_t which);
    std::string said(const char* reason) const;
    const char* whyNot(std::optional<Decimal>& number, const CsvRow& row, std::size_t which,
                       const std::optional<LogUnit>& cellUnit);
    tl::expected<std::optional<LogUnit>, std::string>
    unitOf(const CsvRow& row, std::size_t which, const std::optional<LogUnit>& cellUnit);
    std::string_view cell(const CsvRow& row, std::size_t column) const;
    void rejectWidth(const CsvRow& row);
    std::int64_t lineOf(const CsvRow& row) const;
    Done checkNamesKnown() const;
    std::string_view timeText(const CsvRow& row);
    Done settleOrder(LogFile& file);
    Result<Zone> zoneOfTimes(LogFile& file) const;
    Done addStart(LogFile& file);
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
    RowUnits m_units;
    std::string m_reason; ///< of the value rejected last
    std::optional<ElapsedTimes> m_elapsed;
    RowTimes m_times;
    DateOrderVotes m_votes;
    NumberCells m_numbers;
    Rejects m_rejects;
    std::string m_joined; ///< date and time of day of two columns
    std::int64_t m_rowsRead = 0;
    std::int64_t m_shortRows = 0; ///< without their last cells
    bool m_anyLocal = false;
    std::string m_zoneOfRows; ///< behind the local times: "America/Denver", "EST", or nothing
};

/// The header of the time column: "Logged", or "Date+Time" for two.
std::string timeHeader(const Dialect& dialect);

} // namespace holdband
