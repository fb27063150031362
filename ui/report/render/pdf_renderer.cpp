#include "ui/report/render/pdf_renderer.h"

#include "ui/report/compose/plain_text.h"
#include "ui/report/render/page_flow.h"
#include "ui/report/render/pdf_table.h"
#include "ui/words/words.h"

#include <QBuffer>
#include <QPdfWriter>
#include <algorithm>

namespace holdband::report {

namespace {

constexpr double pageMargin = 50.0; ///< points, around the page
constexpr double footer = 26.0;     ///< at the bottom of the page
/// Points per unit of the chart: its type of 13 becomes 8.8 points.
constexpr double chartScale = 0.68;
constexpr int resolution = 1200; ///< dots per inch

QFont fontOf(double points, QFont::Weight weight = QFont::Normal)
{
    QFont font;
    font.setPointSizeF(points);
    font.setWeight(weight);
    // Without ligatures, so that a search finds "final".
    font.setLetterSpacing(QFont::AbsoluteSpacing, 0.02);
    return font;
}

class Layout {
public:
    Layout(PageFlow& flow, const ui::Colours& colours) : m_flow(flow), m_colours(colours) {}

    void put(const Document& document)
    {
        putTitle(document);
        const auto& blocks = document.blocks;
        for (std::size_t i = 0; i < blocks.size(); ++i) {
            if (const auto* heading = std::get_if<Heading>(&blocks[i]))
                putHeading(*heading, i + 1 < blocks.size() ? leastOf(blocks[i + 1]) : 0.0);
            else
                std::visit([this](const auto& block) { take(block); }, blocks[i]);
        }
    }

private:
    void words(const QString& text, const QFont& font, const QColor& colour, double indent = 0.0)
    {
        m_flow.flow({text, font, colour, indent});
    }

    void putTitle(const Document& document)
    {
        words(document.kind, fontOf(9.0), m_colours.muted);
        words(shortened(document.title, mostOfTitle), fontOf(21.0, QFont::DemiBold),
              m_colours.text);
        if (!document.subtitle.isEmpty())
            words(shortened(document.subtitle, 2 * mostOfTitle), fontOf(9.0), m_colours.muted);
        m_flow.space(7.0);
        const double scale = m_flow.scale();
        const QLineF rule(0.0, m_flow.y() * scale, m_flow.width() * scale, m_flow.y() * scale);
        const QPen pen(m_colours.cardEdge, 0.8 * scale);
        m_flow.put([=](QPainter& painter) {
            painter.setPen(pen);
            painter.drawLine(rule);
        });
        m_flow.space(10.0);
    }

    /// The height that must not be separated from a heading.
    double leastOf(const Block& block) const
    {
        if (const auto* table = std::get_if<Table>(&block)) {
            const PdfTable layout(m_flow, *table, m_colours, tableFont());
            // A short table is not split.
            return layout.height() < 0.3 * m_flow.height() ? layout.height() : layout.leastHeight();
        }
        if (const auto* figure = std::get_if<Figure>(&block))
            return heightOf(*figure);
        return 30.0;
    }

    void putHeading(const Heading& heading, double least)
    {
        m_flow.space(15.0);
        m_flow.need(24.0 + least);
        words(shortened(heading.text, mostOfTitle), fontOf(12.0, QFont::DemiBold), m_colours.text);
        m_flow.advance(2.0);
    }

    void take(const Heading&) {}

    void take(const Paragraph& paragraph)
    {
        const bool lead = paragraph.tone == Tone::lead;
        const bool muted = paragraph.tone == Tone::muted;
        words(unbroken(calm(paragraph.text)),
              fontOf(lead    ? 13.0
                     : muted ? 8.8
                             : 9.5),
              muted ? m_colours.muted : m_colours.text);
        m_flow.space(5.0);
    }

    void take(const Bullets& bullets)
    {
        const QFont font = fontOf(9.5);
        for (const QString& item : bullets.items) {
            const QString text = unbroken(calm(item));
            // A short enough item is not split across pages.
            const double height = m_flow.wrapped(text, font, m_flow.width() - 12.0, 1.32).height();
            m_flow.need(std::min(height, 60.0));
            m_flow.putLine(QStringLiteral("•"), font, m_colours.muted,
                           {2.0, m_flow.y(), 10.0, 9.5 * 1.32}, Qt::AlignLeft);
            words(text, font, m_colours.text, 12.0);
            m_flow.space(2.0);
        }
    }

    static QFont tableFont() { return fontOf(8.6); }

    void take(const Table& table)
    {
        if (table.shown == Shown::amongFigures)
            return;
        PdfTable layout(m_flow, table, m_colours, tableFont());
        m_flow.need(layout.leastHeight());
        layout.put();
        m_flow.space(7.0);
        if (table.rows.size() > table.mostRows)
            words(moreRows(table.rows.size() - table.mostRows), fontOf(8.8), m_colours.muted);
    }

    double heightOf(const Figure& figure) const
    {
        const double width = m_flow.width() / chartScale;
        return std::min(figure.picture->heightFor(width) * chartScale,
                        m_flow.height() - 2.0 * footer);
    }

    void take(const Figure& figure)
    {
        const double height = heightOf(figure);
        m_flow.space(6.0);
        m_flow.need(height + 30.0);
        PictureLook look;
        look.font.setPixelSize(13);
        look.font.setHintingPreference(QFont::PreferNoHinting);
        look.vectors = true;
        look.columns = 2.0;
        const QSizeF size(m_flow.width() / chartScale, height / chartScale);
        const double scale = m_flow.scale();
        const double top = m_flow.y() * scale;
        m_flow.put([=, picture = figure.picture](QPainter& painter) {
            painter.translate(0.0, top);
            painter.scale(scale * chartScale, scale * chartScale);
            picture->paint(painter, size, look);
        });
        m_flow.advance(height + 2.0);
        words(shortened(figure.caption, mostOfCell), fontOf(8.4), m_colours.muted);
        m_flow.space(4.0);
    }

    PageFlow& m_flow;
    const ui::Colours& m_colours;
};

void paintFooter(QPainter& painter, const PageFlow& flow, const QString& words, int page,
                 const ui::Colours& colours)
{
    const double scale = flow.scale();
    const QRectF line(0.0, (flow.height() + 10.0) * scale, flow.width() * scale, 14.0 * scale);
    painter.setFont(fontOf(8.0));
    painter.setPen(colours.muted);
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, words);
    painter.drawText(line, Qt::AlignRight | Qt::AlignVCenter,
                     ui::Words::tr("page %1 of %2").arg(page + 1).arg(flow.pageCount()));
}

bool paintPages(QPdfWriter& writer, const PageFlow& flow, const QString& footerText,
                const Stopped& stopped)
{
    const ui::Colours& colours = ui::coloursOf(ui::Scheme::light);
    QPainter painter(&writer);
    for (int page = 0; page < flow.pageCount(); ++page) {
        if (stopped && stopped())
            return false;
        if (page > 0)
            writer.newPage();
        for (const PageFlow::Stroke& stroke : flow.page(page)) {
            painter.save();
            stroke(painter);
            painter.restore();
        }
        painter.save();
        paintFooter(painter, flow, footerText, page, colours);
        painter.restore();
    }
    return painter.end();
}

} // namespace

QByteArray asPdf(const Document& document, const QPageSize& paper, const Stopped& stopped)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(resolution);
    writer.setPageSize(paper);
    writer.setPageMargins(QMarginsF(pageMargin, pageMargin, pageMargin, pageMargin),
                          QPageLayout::Point);
    writer.setTitle(shortened(document.title, mostOfTitle));
    writer.setCreator(QStringLiteral("Holdband"));
    const QSizeF inner = paper.size(QPageSize::Point) - QSizeF(2.0 * pageMargin, 2.0 * pageMargin);
    PageFlow flow(writer, inner - QSizeF(0.0, footer));
    Layout(flow, ui::coloursOf(ui::Scheme::light)).put(document);
    if (!paintPages(writer, flow, shortened(document.footer, mostOfTitle), stopped))
        return {};
    return buffer.data();
}

} // namespace holdband::report
