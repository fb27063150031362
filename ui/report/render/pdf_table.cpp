#include "ui/report/render/pdf_table.h"

#include "ui/report/compose/plain_text.h"

#include <algorithm>
#include <numeric>

namespace holdband::report {

namespace {

constexpr double gap = 9.0;         ///< points between columns
constexpr double padding = 2.1;     ///< above and below a row
constexpr double leading = 1.25;    ///< sizes of the font
constexpr double smallest = 6.6;    ///< points of the font
constexpr double longestWord = 110; ///< longer words are broken

double sum(const std::vector<double>& values)
{
    return std::accumulate(values.begin(), values.end(), 0.0);
}

} // namespace

PdfTable::PdfTable(PageFlow& flow, const Table& table, const ui::Colours& colours,
                   const QFont& font)
    : m_flow(flow), m_table(table), m_colours(colours), m_font(font), m_bold(font)
{
    m_bold.setWeight(QFont::DemiBold);
    measure();
    if (room() < sum(m_natural)) { // a slightly smaller font is better than many line breaks
        m_font.setPointSizeF(0.92 * font.pointSizeF());
        m_bold.setPointSizeF(m_font.pointSizeF());
        measure();
    }
    // Even smaller if words would have to be broken.
    while (room() < sum(m_least) && m_font.pointSizeF() > smallest) {
        m_font.setPointSizeF(0.92 * m_font.pointSizeF());
        m_bold.setPointSizeF(m_font.pointSizeF());
        measure();
    }
    if (table.headerShown) {
        std::vector<QString> titles;
        for (const Column& column : table.columns)
            titles.push_back(shortened(column.title, mostOfCell));
        m_header = rowOf(titles, m_font);
    }
    const std::size_t shown = std::min(table.rows.size(), table.mostRows);
    for (std::size_t i = 0; i < shown; ++i) {
        std::vector<QString> texts;
        for (const Cell& cell : table.rows[i])
            texts.push_back(shortened(cell.text, mostOfCell));
        m_rows.push_back(rowOf(texts, table.rows[i].front().strong ? m_bold : m_font));
    }
}

void PdfTable::addMeasure(const QString& text, const QFont& font, bool wraps, std::size_t column,
                          double share)
{
    double least = 0.0;
    const QStringList parts = wraps ? text.split(u' ') : QStringList{text};
    for (const QString& part : parts)
        least = std::max(least, m_flow.widthOf(part, font) + 1.0);
    m_least[column] = std::max(m_least[column], std::min(least, longestWord));
    const double natural = std::max(share * m_flow.widthOf(text, font), least);
    m_natural[column] = std::max(m_natural[column], natural + 1.0);
}

double PdfTable::room() const
{
    return m_flow.width() - gap * static_cast<double>(m_table.columns.size() - 1);
}

/// Each column gets its natural width if there is space; else a width between its minimum and that.
void PdfTable::measure()
{
    const std::size_t count = m_table.columns.size();
    m_natural.assign(count, 0.0);
    m_least.assign(count, 0.0);
    for (std::size_t i = 0; i < count; ++i) {
        const Column& column = m_table.columns[i];
        for (const std::vector<Cell>& row : m_table.rows)
            addMeasure(shortened(row[i].text, mostOfCell), row[i].strong ? m_bold : m_font,
                       column.wide, i);
        if (!m_table.headerShown)
            continue;
        // A header may take two lines, so that it does not widen a column of figures too much.
        addMeasure(column.title, m_font, true, i, 0.68);
    }
    const double spare = room() - sum(m_natural);
    m_widths = m_natural;
    if (spare >= 0.0) {
        spread(spare);
        return;
    }
    const double asked = sum(m_natural) - sum(m_least);
    const double share = asked > 0.0 ? std::clamp((room() - sum(m_least)) / asked, 0.0, 1.0) : 0.0;
    for (std::size_t i = 0; i < count; ++i)
        m_widths[i] = m_least[i] + share * (m_natural[i] - m_least[i]);
    if (sum(m_widths) > room()) {
        const double shrink = room() / sum(m_widths);
        for (double& width : m_widths)
            width *= shrink;
    }
}

/// Gives the spare width to the wide columns; if there are none, a little to each.
void PdfTable::spread(double spare)
{
    const auto& columns = m_table.columns;
    const auto wide = std::count_if(columns.begin(), columns.end(),
                                    [](const Column& column) { return column.wide; });
    const double each =
        spare / static_cast<double>(wide > 0 ? wide : static_cast<std::ptrdiff_t>(columns.size()));
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (wide == 0 || columns[i].wide)
            m_widths[i] += each;
    }
}

PdfTable::Row PdfTable::rowOf(const std::vector<QString>& texts, const QFont& font) const
{
    Row row;
    for (std::size_t i = 0; i < texts.size(); ++i) {
        row.cells.push_back(m_flow.wrapped(texts[i], font, m_widths[i], leading));
        row.height = std::max(row.height, row.cells.back().height());
    }
    row.height += 2.0 * padding;
    return row;
}

double PdfTable::height() const
{
    double height = m_header ? m_header->height : 0.0;
    for (const Row& row : m_rows)
        height += row.height;
    return height;
}

double PdfTable::leastHeight() const
{
    double least = m_header ? m_header->height : 0.0;
    for (std::size_t i = 0; i < std::min<std::size_t>(2, m_rows.size()); ++i)
        least += m_rows[i].height;
    return least;
}

void PdfTable::putRow(const Row& row, const std::vector<bool>& strong, bool header)
{
    double x = 0.0;
    const double top = m_flow.y();
    const bool facts = !m_table.headerShown;
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        const PageFlow::Lines& lines = row.cells[i];
        const auto alignment = m_table.columns[i].numeric ? Qt::AlignRight : Qt::AlignLeft;
        // A header is aligned to the bottom, a row to the top.
        double y = header ? top + row.height - padding - lines.height() : top + padding;
        const bool quiet = header || (facts && i == 0);
        for (const QString& line : lines.text) {
            m_flow.putLine(line, strong[i] ? m_bold : m_font,
                           quiet ? m_colours.muted : m_colours.text,
                           {x, y, m_widths[i], lines.lineHeight}, alignment);
            y += lines.lineHeight;
        }
        x += m_widths[i] + gap;
    }
    m_flow.advance(row.height);
    const double scale = m_flow.scale();
    const QLineF rule(0.0, m_flow.y() * scale, (x - gap) * scale, m_flow.y() * scale);
    const QPen pen(header ? m_colours.muted : m_colours.cardEdge, (header ? 0.6 : 0.5) * scale);
    m_flow.put([=](QPainter& painter) {
        painter.setPen(pen);
        painter.drawLine(rule);
    });
}

void PdfTable::putHeader()
{
    if (m_header)
        putRow(*m_header, std::vector<bool>(m_header->cells.size(), false), true);
}

void PdfTable::put()
{
    putHeader();
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        // The last row is never alone on the next page.
        const double together =
            m_rows[i].height + (i + 2 == m_rows.size() ? m_rows[i + 1].height : 0.0);
        if (together > m_flow.left() && !m_flow.atTop()) {
            m_flow.newPage();
            putHeader();
        }
        std::vector<bool> strong;
        for (const Cell& cell : m_table.rows[i])
            strong.push_back(cell.strong);
        putRow(m_rows[i], strong, false);
    }
}

} // namespace holdband::report
