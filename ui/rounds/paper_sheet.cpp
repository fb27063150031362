#include "ui/rounds/paper_sheet.h"

#include "core/exchange/file_writer.h"
#include "core/text/phrase.h"
#include "core/text/times.h"
#include "ui/rounds/round_entry.h"
#include "ui/words/choice_text.h"
#include "ui/words/words.h"

#include <QBuffer>
#include <QDate>
#include <QLocale>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QPdfWriter>

namespace holdband::ui {

namespace {

constexpr int daysOnPaper = 14;
constexpr int columnsOnPage = 6;

/// One page: heading, the columns from `first` on, and a row for each round.
class PaperPage {
public:
    PaperPage(QPainter& painter, QRectF area) : m_painter(painter), m_area(area) {}

    void paint(const PaperSheet& sheet, qsizetype first)
    {
        m_columns = std::min<qsizetype>(columnsOnPage, sheet.columns.size() - first);
        m_lineHeight = m_area.height() / static_cast<double>(sheet.lines.size() + 4);
        setFont(0.55, true);
        m_painter.drawText(cell(0, 0, 1.0), Qt::AlignLeft | Qt::AlignVCenter, sheet.title);
        paintHeading(sheet, first);
        for (qsizetype i = 0; i < sheet.lines.size(); ++i)
            paintLine(3 + i, sheet.lines[i]);
        setFont(0.34, false);
        m_painter.drawText(cell(0, 3 + sheet.lines.size(), 1.0), Qt::AlignLeft | Qt::AlignVCenter,
                           Words::tr("Write the time beside a reading that was taken at "
                                     "another hour. Type them on the Rounds page later."));
    }

private:
    static constexpr double labelShare = 0.26;

    void setFont(double share, bool strong)
    {
        QFont font = m_painter.font();
        font.setPixelSize(std::max(1, static_cast<int>(m_lineHeight * share)));
        font.setBold(strong);
        m_painter.setFont(font);
    }

    double columnWidth() const
    {
        return m_area.width() * (1.0 - labelShare) / static_cast<double>(m_columns);
    }

    /// A rectangle in row `line`, from `left` on, with that share of the width.
    QRectF cell(double left, qsizetype line, double share) const
    {
        return {m_area.left() + left, m_area.top() + static_cast<double>(line) * m_lineHeight,
                m_area.width() * share, m_lineHeight};
    }

    QRectF columnCell(qsizetype column, qsizetype line) const
    {
        QRectF box = cell(m_area.width() * labelShare + static_cast<double>(column) * columnWidth(),
                          line, 1.0);
        box.setWidth(columnWidth());
        return box;
    }

    void paintHeading(const PaperSheet& sheet, qsizetype first)
    {
        setFont(0.36, true);
        for (qsizetype i = 0; i < m_columns; ++i)
            m_painter.drawText(columnCell(i, 1), Qt::AlignCenter | Qt::TextWordWrap,
                               sheet.columns[first + i]);
        setFont(0.36, false);
        m_painter.drawText(cell(0, 2, labelShare), Qt::AlignLeft | Qt::AlignVCenter,
                           Words::tr("last"));
        for (qsizetype i = 0; i < m_columns; ++i)
            m_painter.drawText(columnCell(i, 2), Qt::AlignCenter, sheet.last[first + i]);
    }

    void paintLine(qsizetype line, const QString& words)
    {
        m_painter.drawText(cell(0, line, labelShare), Qt::AlignLeft | Qt::AlignVCenter, words);
        for (qsizetype i = 0; i < m_columns; ++i)
            m_painter.drawRect(columnCell(i, line));
    }

    QPainter& m_painter;
    QRectF m_area;
    qsizetype m_columns = 1;
    double m_lineHeight = 1.0;
};

} // namespace

PaperSheet paperSheet(const results::RoundsSheet& sheet)
{
    PaperSheet paper;
    const QLocale locale = wordsLocale();
    const QDate first = qtDate(sheet.zone.localDate(sheet.now));
    paper.title = Words::tr("Rounds from %1")
                      .arg(locale.toString(first, Words::tr("d MMM yyyy", "pattern of a date")));
    for (const results::RoundRow& row : sheet.rows) {
        if (!row.toRead)
            continue;
        paper.columns << QStringLiteral("%1, %2").arg(shown(row.name), unitText(row));
        paper.last << (row.lastAt ? numberText(row.last, row.decimals) : QString());
    }
    for (int day = 0; day < daysOnPaper; ++day) {
        const QString date =
            locale.toString(first.addDays(day), Words::tr("ddd d MMM", "pattern of a date"));
        for (const RoundWindow& window : sheet.settings.rounds)
            paper.lines << QStringLiteral("%1 · %2").arg(date, roundWordInLine(window.label));
    }
    return paper;
}

void paintPaperSheet(const PaperSheet& sheet, QPagedPaintDevice& device, QPainter& painter)
{
    const QRectF area(0, 0, device.width(), device.height());
    painter.setPen(QPen(Qt::black, device.height() / 1200.0));
    for (qsizetype first = 0; first < sheet.columns.size(); first += columnsOnPage) {
        if (first > 0)
            device.newPage();
        PaperPage(painter, area).paint(sheet, first);
    }
}

Done writePaperSheet(const results::RoundsSheet& sheet, const QString& path)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setTitle(Words::tr("Round sheet"));
        writer.setPageSize(
            QPageSize(sheet.settings.units == UnitSystem::us ? QPageSize::Letter : QPageSize::A4));
        writer.setPageMargins(QMarginsF(15, 15, 15, 15), QPageLayout::Millimeter);
        QPainter painter(&writer);
        paintPaperSheet(paperSheet(sheet), writer, painter);
        if (!painter.end())
            return fileProblem(Phrase::tr("the round sheet could not be drawn"), core(path));
    }
    const QByteArray& bytes = buffer.data();
    return exchange::writeFile(core(path),
                               {bytes.constData(), static_cast<std::size_t>(bytes.size())},
                               exchange::Existing::replace);
}

} // namespace holdband::ui
