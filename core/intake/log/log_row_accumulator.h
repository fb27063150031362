// Collects the rows of a log while it is read: times and values in the file's order, and the
// rejected ones.
#pragma once

#include "core/intake/csv/dialect.h"
#include "core/intake/csv/tokens.h"
#include "core/intake/log/deduplicate.h"
#include "core/intake/log/elapsed_times.h"
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

/// The units beside the values: in the cells ("68.2 °F"), or in a column of a long log. Values in
/// other units than their column's are converted; a column's unit is the header's, else that of its
/// first value.
class RowUnits {
public:
    explicit RowUnits(std::vector<ReadColumn>& columns);

    /// A column has the unit of each row's value.
    void setColumn(std::size_t unitColumn);
    std::optional<std::size_t> column() const { return m_unitColumn; }
    /// The unit that the text of the unit column names, if it suits the column `which`; else a text
    /// with the reason.
    tl::expected<LogUnit, std::string> read(std::string_view text, std::size_t which) const;
    /// The unit behind a number, if it suits the column and is the one set for the import, if one
    /// is.
    tl::expected<LogUnit, std::string> readCell(const LogUnit& unit, std::size_t which,
                                                std::string_view text, std::int64_t line);
    /// A number without a unit, which is in the column's unit.
    void takeBare(std::size_t which, std::string_view text, std::int64_t line);
    /// The value in the column's unit.
    Decimal inUnitOfColumn(Decimal number, const LogUnit& unit, std::size_t which);
    /// Problem (data): some cells of a column have a unit, others don't, and nothing says theirs.
    Done checkBareCells() const;
    /// Sentences about what was converted.
    std::vector<std::string> remarks() const;

private:
    struct Seen {
        std::int64_t line = 0; ///< 0: never
        std::string text;
    };
    struct ColumnUnits {
        bool settled = false;       ///< its unit is known
        std::int64_t converted = 0; ///< how many values
        Seen bare;                  ///< the first cell without a unit
        Seen withUnit;
    };
    tl::expected<LogUnit, std::string> fitting(const LogUnit& unit, std::size_t which) const;

    std::optional<std::size_t> m_unitColumn;
    std::vector<ReadColumn>& m_columns;
    std::vector<ColumnUnits> m_of; ///< as m_columns
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
