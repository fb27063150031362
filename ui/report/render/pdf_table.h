// A table on pages: columns as wide as their contents need, long cells wrapped, the header repeated
// on every page.
#pragma once

#include "ui/report/compose/document.h"
#include "ui/report/render/page_flow.h"

namespace holdband::report {

class PdfTable {
public:
    PdfTable(PageFlow& flow, const Table& table, const ui::Colours& colours, const QFont& font);

    /// The height of the header and the first rows, which must not be separated from a heading.
    double leastHeight() const;
    double height() const;
    void put();

private:
    struct Row {
        std::vector<PageFlow::Lines> cells;
        double height = 0.0;
    };

    void measure();
    double room() const;
    /// `share`: of the text's natural width, if it may take several lines.
    void addMeasure(const QString& text, const QFont& font, bool wraps, std::size_t column,
                    double share = 1.0);
    void spread(double spare);
    Row rowOf(const std::vector<QString>& texts, const QFont& font) const;
    void putRow(const Row& row, const std::vector<bool>& strong, bool header);
    void putHeader();

    PageFlow& m_flow;
    const Table& m_table;
    const ui::Colours& m_colours;
    QFont m_font;
    QFont m_bold;
    std::vector<double> m_natural;
    std::vector<double> m_least;
    std::vector<double> m_widths;
    std::optional<Row> m_header;
    std::vector<Row> m_rows;
};

} // namespace holdband::report
