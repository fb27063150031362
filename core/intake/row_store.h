// The rows of a log while it is read: times and values in the file's order, and what was rejected.
#pragma once

#include "core/intake/date_order.h"
#include "core/intake/dialect.h"
#include "core/intake/doubled_hours.h"
#include "core/intake/log.h"
#include "core/intake/tidy.h"
#include "core/intake/tokens.h"
#include "core/intake/units.h"
#include "core/intake/values.h"
#include "core/problem.h"

#include <string>
#include <string_view>
#include <vector>

namespace holdband {

/// The first rejected rows are kept, all are counted.
class Rejects {
public:
    void add(std::int64_t line, std::string_view column, std::string_view text,
             std::string_view reason);
    void moveInto(LogFile& file);

private:
    std::vector<RejectedRow> m_rows;
    std::int64_t m_total = 0;
};

/// A column to be read, with the unit that was chosen for it.
struct ReadColumn {
    std::size_t index = 0; ///< in the header
    LogColumn column;      ///< without readings
    ChosenUnit unit;
};

class RowStore {
public:
    RowStore(const LogRequest& request, Dialect dialect, std::vector<ReadColumn> columns);

    /// Room for about so many rows, so that it needn't grow.
    void expect(std::size_t rows);
    void take(const CsvRow& row);
    std::int64_t rowsRead() const { return m_rowsRead; }

    /// Settles times and decimal sign, and fills the file's columns. Empties this store.
    Done finishInto(LogFile& file);

private:
    bool hasRightWidth(const CsvRow& row);
    bool takeTime(const CsvRow& row);
    bool takeLoose(const LooseTime& time, const CsvRow& row);
    void takeValue(const CsvRow& row, std::size_t which);
    std::string_view timeText(const CsvRow& row);
    Done settleOrder(LogFile& file);
    Done resolve(LogFile& file);
    Done fillColumns(LogFile& file);
    Done judgeValues(LogColumn& column, const ChosenUnit& unit, LogFile& file);

    const LogRequest& m_request;
    Dialect m_dialect;
    std::string m_timeHeader;
    std::vector<ReadColumn> m_columns;
    std::vector<ColumnInFileOrder> m_values; ///< as m_columns
    RowTimes m_times;
    DateOrderVotes m_votes;
    NumberCells m_numbers;
    Rejects m_rejects;
    std::string m_joined; ///< date and time of day of two columns
    std::int64_t m_rowsRead = 0;
    bool m_anyLocal = false;
};

/// The header of the time: "Logged", or "Date+Time".
std::string timeHeader(const Dialect& dialect);

} // namespace holdband
