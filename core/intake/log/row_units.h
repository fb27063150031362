// The units beside a log's values, in cells or in a column.
#pragma once

#include "core/intake/log/read_column.h"
#include "core/intake/log/values.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace holdband {

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

} // namespace holdband
